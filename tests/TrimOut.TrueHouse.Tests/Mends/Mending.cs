using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Mends;

/// <summary>One finding at hand, and a person who does what its mend says, figure by figure.</summary>
public sealed partial class Mending(Walk walk, Stage stage, Said said)
{
    /// <summary>The finding.</summary>
    public Said Said { get; } = said;

    /// <summary>The house as it is.</summary>
    public RealHouse Truth => walk.Installer.Truth;

    /// <summary>What is written.</summary>
    public Book Book => walk.Book;

    /// <summary>All that a check says of the same subject now, in each of its phases.</summary>
    public IEnumerable<Mending> EachOf(string check) =>
        Said.Of(Book.House).Where(s => s.Check == check && s.Subject == Said.Subject).Select(s => new Mending(walk, stage, s));

    /// <summary>What it is about, by name.</summary>
    public string Name => Book.NameOf(Said.Subject);

    /// <summary>The unit that it is about; the first one of a window.</summary>
    public RealUnit Unit => Truth.Units.First(u => u.Key == Name || u.Opening.Tag == Name);

    /// <summary>The opening that it is about.</summary>
    public RealOpening Opening => Truth.Openings.First(o => Name.StartsWith(o.Tag, StringComparison.Ordinal));

    /// <summary>The lengths that the mend names, in its order.</summary>
    public IReadOnlyList<Length> Lengths => [.. LengthInText().Matches(Said.Mend)
        .Select(m => LengthText.Read(m.Value.Replace(" in", "\"", StringComparison.Ordinal), Book.House.DisplayUnits).Value)];

    /// <summary>The side that the mend names.</summary>
    public string Side => Said.Mend.Split(' ', ',', ';', '.', ':').First(word => word is "left" or "right");

    /// <summary>What is written in a fact now.</summary>
    public Length Now(string name, Fact<Length> fact) => Book.House.Find(Book.IdOf(fact.Subject, name))!.Get(fact)!.Value;

    /// <summary>Writes a length, exactly.</summary>
    public bool Write(string name, Fact fact, Length length) => Book.Correct(name, fact,
        string.Create(CultureInfo.InvariantCulture, $"{length.Millimetres} mm"));

    /// <summary>Writes a text.</summary>
    public bool Write(string name, Fact fact, string typed) => Book.Correct(name, fact, typed);

    /// <summary>Reads the loops of the unit's cable again, once its fault is found and mended.</summary>
    public bool TestAgain()
    {
        var (unit, cable, meter) = (Unit, Unit.Cable!, walk.Installer.Meter);
        cable.Damages.Clear();
        (cable.Pulled, cable.ComesOutAs) = (cable.Sheet, null);
        Write(unit.Key, RunFacts.FirstApart, "open");
        Write(unit.Key, RunFacts.FirstToFrame, "open");
        // What is written beside a reading is how warm the cable is on the day of it.
        var now = stage < Stage.CloseIn ? Truth.CableAtFirstTest : Truth.CableAtSecondTest;
        var done = Write(unit.Key, RunFacts.FirstLoop, meter.Ohms(cable.Ohms(Stage.Pulled, now), Truth.MeterLeads, unit.Key, "again"));
        Write(Book.JobItself, HouseFacts.MeterLeads, Installer.Number(Truth.MeterLeads));
        done &= Write(unit.Key, RunFacts.FirstLoop, meter.Ohms(cable.Ohms(Stage.Pulled, now), Truth.MeterLeads, unit.Key, "once more"));
        for (var n = 0; n < cable.Legs.Count; n++)
            Write($"{unit.Key}/{n + 1}", LegFacts.Length, walk.Installer.Tape.Pace(cable.Legs[n].Metres, unit.Key, "leg", $"{unit.Key}/{n + 1}"));
        return stage < Stage.CloseIn ? done
            : done && Write(unit.Key, RunFacts.SecondApart, "open") && Write(unit.Key, RunFacts.SecondToFrame, "open")
                && Write(unit.Key, RunFacts.SecondLoop, meter.Ohms(cable.Ohms(Stage.CloseIn, now), Truth.MeterLeads, unit.Key, "after"));
    }

    /// <summary>Types both lines of a sheet as they stand there.</summary>
    public bool ReadSheetAgain()
    {
        if (Truth.Kinds.FirstOrDefault(k => k.Name == Name) is not { } kind)
            return Write(Name, PanelTypeFacts.TotalCurrent, Installer.Number(Truth.PanelSheets.First(p => p.Name == Name).Total)) && Held(ItemKind.PanelType);
        return Write(Name, CoveringKindFacts.LeastVolts, Installer.Number(kind.LeastVolts))
            && Write(Name, CoveringKindFacts.StartingCurrent, Installer.Number(kind.Starting))
            && Write(Name, CoveringKindFacts.DepthFlush, Truth.Typed(kind.DepthFlush))
            && Write(Name, CoveringKindFacts.GapBetween, Truth.Typed(kind.GapLeast)) && Write(Name, CoveringKindFacts.GapMost, Truth.Typed(kind.GapMost))
            && Held(ItemKind.CoveringKind);

        bool Held(ItemKind sheet)
        {
            Book.HoldAgainstSheet(sheet, Name);
            return true;
        }
    }

    /// <summary>Measures the opening again, and reads the tape right.</summary>
    public bool MeasureAgain()
    {
        var (shape, tag, tape) = (Opening.Finished, Opening.Tag, walk.Installer.Tape);
        foreach (var (fact, at) in ((Fact, double)[])[(WindowFacts.WidthTop, shape.WidthAt(shape.Height - 25)), (WindowFacts.WidthMiddle, shape.Width),
            (WindowFacts.WidthBottom, shape.WidthAt(25))])
            Write(tag, fact, tape.Read(at, tag, fact.Name));
        foreach (var (fact, at) in ((Fact, double)[])[(WindowFacts.HeightLeft, shape.HeightAt(25)), (WindowFacts.HeightMiddle, shape.Height),
            (WindowFacts.HeightRight, shape.HeightAt(shape.Width - 25))])
            Write(tag, fact, tape.Read(at, tag, fact.Name));
        Write(tag, WindowFacts.WidthAgain, tape.Read(Math.Min(shape.WidthAt(25), Math.Min(shape.Width, shape.WidthAt(shape.Height - 25))), tag, "third width"));
        Write(tag, WindowFacts.HeightAgain,
            tape.Read(Math.Max(shape.HeightAt(25), Math.Max(shape.Height, shape.HeightAt(shape.Width - 25))), tag, "third height"));
        return Write(tag, WindowFacts.DiagonalDown, tape.Read(shape.DiagonalDown, tag, "down"))
            && Write(tag, WindowFacts.DiagonalUp, tape.Read(shape.DiagonalUp, tag, "up"));
    }

    /// <summary>Reads volts and polarity again, once all is as it should be.</summary>
    public bool ReadVoltsAgain()
    {
        var unit = Unit;
        (unit.Panel!.Volts, unit.Splices) = (unit.Panel.Sheet.Volts * 1.01, 0.01);
        var loaded = unit.Panel.Volts - (unit.Kind.Running * unit.DrawsShare * (unit.Cable!.InLine(Stage.Sheets, 22) + unit.Splices));
        return Write(unit.Key, RunFacts.OpenVolts, Installer.Number(Math.Round(unit.Panel.Volts, 2)))
            && Write(unit.Key, RunFacts.LoadedVolts, Installer.Number(Math.Round(loaded, 2)))
            && Write(unit.Key, RunFacts.Polarity, "right");
    }

    /// <summary>Mounts the unit on the face of the wall, with room for its brackets.</summary>
    public bool MountOutside() => Write(Opening.Tag, WindowFacts.Mount, "outside") && Write(Opening.Tag, WindowFacts.OverlapEachSide, Truth.Typed(50))
        && Write(Opening.Tag, WindowFacts.HeadAbove, Truth.Typed(Unit.Kind.BracketDown + 20))
            && Write(Opening.Tag, WindowFacts.WallAbove, Truth.Typed(Unit.Kind.BracketDown + 90));

    /// <summary>An output that nothing is on; null where the panel is full.</summary>
    public static string? FreeOutput(Panel panel) => Enumerable.Range(1, panel.Type!.Outputs!.Value).Where(o => panel.RunAt(o) is null)
        .Select(o => Installer.Number(o)).FirstOrDefault();

    [GeneratedRegex(@"\d+'-\d+(?: \d+/\d+)?""|\d+ \d+/\d+""|\d+/\d+""|\d+""|\d+(?:\.\d+)? (?:mm|in)\b")]
    private static partial Regex LengthInText();
}

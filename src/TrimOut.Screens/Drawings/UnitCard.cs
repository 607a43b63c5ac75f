using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Drawings;

/// <summary>One unit at a glance: what it is, its drawing, what is next, what is wrong.</summary>
internal static class UnitCard
{
    /// <summary>The fewest lines that a drawing is worth having.</summary>
    public const int LeastDrawing = 8;

    /// <summary>Draws the card.</summary>
    /// <param name="area">Where.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="context">What is seen.</param>
    /// <param name="picture">The drawing on it.</param>
    /// <param name="named">Whether it begins with what the unit is; not where that stands beside it already.</param>
    /// <param name="saidAlready">Findings that stand beside it already.</param>
    /// <param name="phase">The phase that is shown beside it, where a key marks in that one; null for all.</param>
    public static void Draw(Area area, Unit unit, ScreenContext context, Picture picture = Picture.Window, bool named = true,
        IReadOnlyCollection<Finding>? saidAlready = null, Phase? phase = null)
    {
        area = PutUnread(area, unit, context);
        var y = named ? DrawName(area, unit) : 0;
        var findings = Around(context, unit).Where(f => saidAlready?.Contains(f) != true).ToList();
        var wanted = 1 + findings.Take(4).Sum(f => TextWidth.Wrap(context.Report.Said(f), area.Width - 5).Count());
        var room = area.Height - y - 1;
        var drawing = Math.Clamp(room - wanted, Math.Min(LeastDrawing, Math.Max(0, room)), Math.Max(LeastDrawing, Math.Min(18, area.Width / 3)));
        y += Pictures.Draw(area.Rows(y, drawing), picture, unit, context.Glyphs);
        y = Next(area, y, unit, context, phase);
        foreach (var finding in findings)
        {
            if (y >= area.Height)
                break;
            y = Put(area, y, finding, context);
        }
        if (findings.Count > 0 || saidAlready is { Count: > 0 } || y >= area.Height)
            return;
        var waiting = WaitingLine.Of(context.Report, unit);
        if (waiting.Length == 0)
            area.Put(0, y, "Nothing wrong is known.", context.Good);
        else
            area.PutWrapped(0, y, 3, $"{waiting}.", Tone.Caution);
    }

    /// <summary>How much of a unit passes only by values that nobody checked, on the last line, whatever stands above it; returns what is left.</summary>
    public static Area PutUnread(Area area, Unit unit, ScreenContext context)
    {
        var unread = Unread(unit, context);
        if (unread.Length == 0 || area.Height < 3)
            return area;
        area.PutFit(0, area.Height - 1, area.Width, unread, Tone.Caution);
        return area.Rows(0, area.Height - 1);
    }

    /// <summary>How many checks of a unit pass only by values that nobody checked, and where they are listed; empty where none does.</summary>
    public static string Unread(Unit unit, ScreenContext context) => context.Report.UnreadAbout(unit).Count() is > 0 and var unread
        ? $"{NumberText.Counted(unread, "passes", "pass")} only by unchecked values (m)" : "";

    private static int DrawName(Area area, Unit unit)
    {
        var room = unit.Window.Room is { } r ? $"{r.Name}{(r.Floor is { } floor ? $", {floor}" : "")}" : "no room yet";
        var x = area.Put(0, 0, unit.Tag, Tone.Strong);
        area.PutFit(x, 0, area.Width - x, $"  {room}", Tone.Text);
        return area.PutWrapped(0, 1, 2, Summary(unit), Tone.Dim) + (area.Height > 20 ? 1 : 0);
    }

    /// <summary>What is open about a unit, and what stops the parts that it is made of, is fed by or is moved by: stops first.</summary>
    public static IEnumerable<Finding> Around(ScreenContext context, Unit unit) =>
        context.Report.About(unit).Where(f => f.Open).Concat(context.Report.StopsOfParts(unit)).OrderBy(f => f.Check.Severity);

    /// <summary>The same of a panel: its own, and of every unit that is on it.</summary>
    public static IEnumerable<Finding> Around(ScreenContext context, Panel panel) =>
        context.Report.About(panel).Where(f => f.Open).Concat(panel.Runs.SelectMany(r => Around(context, r.Unit))).Distinct();

    /// <summary>The lines that a finding takes.</summary>
    public static int Lines(Finding finding, int cells, ScreenContext context) =>
        TextWidth.Wrap(context.Report.Said(finding), cells - TextWidth.Of(WordOf(finding.Check.Severity)) - 1).Count();

    /// <summary>A finding with its severity in words, named by what it is about where nothing else on the screen says it; returns the line after it.</summary>
    public static int Put(Area area, int y, Finding finding, ScreenContext context, bool named = false)
    {
        var of = named ? $"{context.House.NameOf(finding.Subject)}: " : "";
        var x = area.Put(0, y, WordOf(finding.Check.Severity), ToneOf(finding.Check.Severity)) + 1;
        return area.Part(x, y, area.Width - x, area.Height - y).PutWrapped(0, 0, 4, of + context.Report.Said(finding),
            finding.Check.Severity == Severity.Stop ? Tone.Strong : Tone.Text) + y;
    }

    /// <summary>What is said of a unit where nothing wrong was found: that checks wait is never well.</summary>
    public static string NothingFound(ScreenContext context, Unit unit) =>
        WaitingLine.Of(context.Report, unit) is { Length: > 0 } waiting
            ? $"Nothing wrong is known yet. {waiting}."
            : "Nothing wrong is known.";

    public static string WordOf(Severity severity) => severity switch
    {
        Severity.Stop => "STOP",
        Severity.Caution => "CAUTION",
        _ => "note",
    };

    public static Tone ToneOf(Severity severity) => severity switch
    {
        Severity.Stop => Tone.Stop,
        Severity.Caution => Tone.Caution,
        _ => Tone.Note,
    };

    private static string Summary(Unit unit)
    {
        var (window, units) = (unit.Window, unit.House.DisplayUnits);
        var size = unit.PartWidth is { } w && window.KnownHeight is { } h ? $"{w.Show(units)} x {h.Show(units)}" : "no size yet";
        string?[] parts = [unit.Kind?.Name ?? "no kind yet", size, window.Mount is { } mount ? KebabCase.Of(mount) : null,
            unit.LeadSide is { } lead ? $"lead {KebabCase.Of(lead)}" : null, window.Reach is { } reach and not Reach.Floor ? KebabCase.Of(reach) : null];
        return string.Join(", ", parts.OfType<string>());
    }

    /// <summary>The step that is marked next; where a phase is shown it is one of that, and what comes before it is said below.</summary>
    private static int Next(Area area, int y, Unit unit, ScreenContext context, Phase? phase)
    {
        if (y >= area.Height)
            return y;
        var first = Progress.Next(unit, context.Steps);
        if (NextMark.Of(phase, unit, context.Steps) is { } step)
        {
            var x = area.Put(0, y, $"{context.Glyphs.Arrow} {step.Phase.Full()}: ", Tone.Heading);
            area.PutFit(x, y++, area.Width - x, step.Label);
            return first is null || first == step ? y : area.PutWrapped(0, y, 2, $"Next of all is {first.Label} ({first.Phase.Full()}).", Tone.Caution);
        }
        y = area.PutWrapped(0, y, 2, phase is { } shown && first is not null ? $"Every step of {shown.Full()} is done." : "Every step is done.", context.Good);
        return first is null ? y : area.PutWrapped(0, y, 2, $"Next of all is {first.Label} ({first.Phase.Full()}).", Tone.Dim);
    }
}

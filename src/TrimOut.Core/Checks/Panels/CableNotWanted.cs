using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>What is said to have no home run, or no covering at all, has no cable in the wall, is moved by nothing and is not on order.</summary>
/// <remarks>
/// <para>Why: a cable that was landed is live, whoever says what of its unit, and its output is not free; all else that is checked of a unit on a panel
/// is no longer asked. What nobody cancels is made, and paid for.</para>
/// <para>To clear: say again that it is fed by a panel, or cover its window; or take the cable off its output with the panel off, clear what is written of
/// it, take the unit off its remotes, cancel its order and clear the day of it. A cable that stays in the wall for later is waived with the reason.</para>
/// </remarks>
public sealed class CableNotWanted() : Check<Window>(Subjects.Windows)
{
    /// <summary>Its id.</summary>
    public const string Id = "cable-not-wanted";

    private static readonly Message Landed = new("{0} {1}, and its cable is landed on {2} output {3}.", "landed");
    private static readonly Message Pulled = new("{0} {1}, and its cable lies in the wall.", "pulled");
    private static readonly Message Moved = new("{0} {1}, and {2} is still to move it.", "moved");
    private static readonly Message OnOrder = new("{0} {1}, and its unit was ordered on {2}.", "on-order");
    private static readonly Message InABox = new("{0} {1}, and the box of its unit is here; it was ordered on {2}.", "in-a-box");
    private static readonly Message LeftOut = new("is in a window that is left out", "left-out");
    private static readonly Message Feeds = new("is to be fed otherwise than by a panel", "fed-otherwise");
    private static readonly Message CoverOrTakeOff =
        new("Cover the window again, or take the cable off its output with the panel off and clear its panel and output.");
    private static readonly Message PanelOrTakeOff =
        new("Say that a panel feeds it, or take the cable off its output with the panel off and clear its panel and output.");
    private static readonly Message SayOrWaive = new("Say what is so: cover it from a panel, or waive this and say where its cable ends.");
    private static readonly Message CancelOrder =
        new("Cover the window again, or call the maker today, cancel the unit, and clear the day on which it was ordered.");
    private static readonly Message SendBack =
        new("Cover the window again, or ask the maker to take the unit back, and clear the day on which it was ordered; else waive this and say why.");
    private static readonly Message TakeOffRemote = new("Cover the window again, or take the unit off {0}.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new(Id, "Not wanted, and its cable, its remote or its order is there",
        Severity.Caution, Phase.Power,
        new Source(Source.CommonPractice, "left out, battery or plug-in = no cable pulled or landed; left out = no remote and no preset moves it, " +
            "and it is not ordered"));

    /// <inheritdoc/>
    public override Outcome Judge(Window subject)
    {
        var unwanted = subject.Units.Where(u => subject.LeftOut || !u.OnPanel).ToList();
        return unwanted.Count == 0
            ? new Outcome.DoesNotApply()
            : Outcome.All(unwanted.SelectMany(u => new[]
            {
                subject.LeftOut ? OfCable(u, leftOut: true) : null, u.OnPanel ? null : OfCable(u, leftOut: false), OfRemotes(u), OfOrder(u),
            })) ?? (Outcome)new Outcome.Fine();
    }

    private static Outcome.Found? OfCable(Unit unit, bool leftOut)
    {
        if (unit.CableThatIsThere is not { } run)
            return null;
        var field = leftOut ? FieldRef.To(unit.Window.Item, WindowFacts.Covered) : FieldRef.To(unit.Item, UnitFacts.Power);
        Arg said = leftOut ? LeftOut : Feeds;
        if (run.Get(RunFacts.Panel) is { } panel && unit.House.FindPanel(panel.Id) is { } on && run.Get(RunFacts.Output) is { } output)
        {
            return new Outcome.Found(Landed.With(NameOf(unit), said, Arg.Name(on), output), leftOut ? CoverOrTakeOff : PanelOrTakeOff, field);
        }
        return CableInWall.IsRead(run) ? new Outcome.Found(Pulled.With(NameOf(unit), said), SayOrWaive, field) : null;
    }

    private static Outcome.Found? OfRemotes(Unit unit)
    {
        if (!unit.Window.LeftOut)
            return null;
        // A remote that moves it has its presets with it; one that does not may still have a position of it in a preset, which is what has to go then.
        var remotes = unit.House.Look(Lookups.RemotesByUnit, unit.Id);
        var movers = remotes.Concat(unit.House.Look(Lookups.PresetsByUnit, unit.Id).Where(p => !remotes.Contains(unit.House.Find(p)?.Under ?? "")))
            .Select(unit.House.Find).OfType<Item>().Select(r => Arg.Name(r)).ToList();
        return movers.Count == 0 ? null
            : new Outcome.Found(Moved.With(NameOf(unit), (Arg)LeftOut, Arg.All(movers)), TakeOffRemote.With(Arg.All(movers)),
                FieldRef.To(unit.Window.Item, WindowFacts.Covered));
    }

    private static Outcome.Found? OfOrder(Unit unit) => !unit.Window.LeftOut || unit.Item.Get(UnitFacts.OrderedOn) is not { } on ? null
        : new Outcome.Found((unit.BoxIsHere ? InABox : OnOrder).With(NameOf(unit), (Arg)LeftOut, Arg.Value(UnitFacts.OrderedOn, on)),
            unit.BoxIsHere ? SendBack : CancelOrder, FieldRef.To(unit.Window.Item, WindowFacts.Covered));

    /// <summary>A unit, or its window where that is left out: then the unit has no tag.</summary>
    private static Arg NameOf(Unit unit) => unit.Window.LeftOut ? Arg.Name(unit.Window) : Arg.Name(unit);
}

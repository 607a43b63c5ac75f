using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Testing;

/// <summary>
/// The list of steps of the first version, and lists as later versions might have them: two more steps and one more piece of evidence, then one step more
/// again.
/// </summary>
public static class LaterSteps
{
    /// <summary>A step of a unit in a phase that had some.</summary>
    public static readonly Step Levelled = new("head-levelled", Phase.Hang, ItemKind.Unit, "Head leveled", "A level on the head, both ways.", [])
    { Since = 2 };

    /// <summary>A step of a panel in a phase that asked nothing of panels.</summary>
    public static readonly Step Aired = new("panel-aired", Phase.Hang, ItemKind.Panel, "Air around the panel", "A hand's breadth on all sides.", [])
    { Since = 2 };

    /// <summary>A step of a unit that came with the third version.</summary>
    public static readonly Step Dusted = new("head-dusted", Phase.Hang, ItemKind.Unit, "Head dusted", "No drywall dust in the head.", []) { Since = 3 };

    /// <summary>The step that asks for more evidence from the second version on.</summary>
    public static readonly Step ClickedIn = StepList.Find("clicked-in")! is var step
        ? step with
        {
            Evidence = [.. step.Evidence.Where(f => step.SinceOf(f) == 1), UnitFacts.Photo],
            Later = ImmutableDictionary<Fact, int>.Empty.Add(UnitFacts.Photo, 2),
        }
        : null!;

    /// <summary>The first version: what this program has, without all that came later.</summary>
    public static readonly StepList First = new(StepList.All.Where(s => s.Since == 1).Select(s => s with
    {
        Evidence = [.. s.Evidence.Where(f => s.SinceOf(f) == 1)],
        Later = ImmutableDictionary<Fact, int>.Empty,
        Applies = unit => s.Applies(unit) && !s.Undecided(unit),
        Undecided = _ => false,
        UndecidedSince = 1,
        AlsoSince = 1,
        AlsoMissing = s.AlsoSince == 1 ? s.AlsoMissing : _ => null,
        LaterMissing = _ => null,
        LaterMissingSince = 1,
    }));

    /// <summary>The second version.</summary>
    public static readonly StepList Second = new(First.Steps.Select(s => s.Id == ClickedIn.Id ? ClickedIn : s)
        .SelectMany(s => s.Id == "moves-free" ? (Step[])[s, Levelled, Aired] : [s]));

    /// <summary>The third version.</summary>
    public static readonly StepList Third = new(Second.Steps.SelectMany(s => s.Id == Levelled.Id ? (Step[])[s, Dusted] : [s]));
}

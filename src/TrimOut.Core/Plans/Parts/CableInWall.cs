using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Whether the cable of a unit lies in the wall, by what was marked or measured of it: common practice, no published source.</summary>
public static class CableInWall
{
    private static readonly string[] Marked = ["cable-pulled", "both-ends-labelled", "wall-photographed", "tested-first", "cable-found", "entry-measured",
        "tail-measured", "tested-second", "landed", "spliced", "volts-read", "output-proved"];

    /// <summary>What nobody can write of a cable that is not there.</summary>
    private static readonly ImmutableArray<Fact> Read =
    [
        RunFacts.TailAtWindow, RunFacts.TailAtPanel, RunFacts.LabelAtWindow, RunFacts.LabelAtPanel, RunFacts.FirstLoop, RunFacts.FirstApart,
        RunFacts.FirstToFrame, RunFacts.TailFound, RunFacts.SecondLoop, RunFacts.SecondApart, RunFacts.SecondToFrame, RunFacts.OpenVolts,
        RunFacts.LoadedVolts, RunFacts.Polarity,
    ];

    /// <summary>Whether it lies there: a step that takes it was done, or something was read off it. Also of a unit that is said to need none.</summary>
    /// <param name="unit">The unit.</param>
    public static bool IsThere(Unit unit) => unit.CableThatIsThere is { } run
        && (IsRead(run) || unit.Item.Get(UnitFacts.EntryAsBuilt) is not null || AlreadyHere.Any(unit, null, Marked));

    /// <summary>Whether something was read off the cable of a run.</summary>
    internal static bool IsRead(Item run) => Read.Any(f => run.Latest(f)?.Stored is not null);
}

using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Every cable found again after drywall and paint.</summary>
internal static class CloseInSteps
{
    public static readonly ImmutableArray<Step> All =
    [
        new("cable-found", Phase.CloseIn, ItemKind.Unit, "Cable found again",
            "Find the tail at the window; where it went under plaster, mark it before you cut.",
            [])
        {
            Applies = unit => unit.OnPanel,
        },
        new("entry-measured", Phase.CloseIn, ItemKind.Unit, "Entry as built",
            "Measure where the cable really leaves the wall.",
            [UnitFacts.EntryAsBuilt])
        {
            Applies = unit => unit.OnPanel,
        },
        new("tail-measured", Phase.CloseIn, ItemKind.Unit, "Tail still long enough",
            "Measure what is left of the tail.",
            [RunFacts.TailFound])
        {
            Applies = unit => unit.OnPanel,
        },
        new("tested-second", Phase.CloseIn, ItemKind.Unit, "Second test",
            "All readings again: the loop as the first time, open with the far end open, open to the building. A difference is damage in the wall.",
            [RunFacts.SecondLoop, RunFacts.SecondApart, RunFacts.SecondToFrame])
        {
            Applies = unit => unit.OnPanel,
            Later = ImmutableDictionary<Fact, int>.Empty.Add(RunFacts.SecondApart, 2).Add(RunFacts.SecondToFrame, 2),
        },
    ];
}

using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Units on their brackets.</summary>
internal static class HangSteps
{
    public static readonly ImmutableArray<Step> All =
    [
        new("brackets-fixed", Phase.Hang, ItemKind.Unit, "Brackets fixed",
            "Set back by the sheet, level, into something that holds. Ladder on firm ground, a second person for wide units.",
            [UnitFacts.Setback, UnitFacts.FixedInto])
        {
            Later = ImmutableDictionary<Fact, int>.Empty.Add(UnitFacts.FixedInto, 2),
            OnlyWhere = ImmutableDictionary<Fact, Func<Subject, bool>>.Empty.Add(UnitFacts.Setback, s => s is not Unit { Window.Mount: Mount.Outside }),
        },
        new("centre-support-clear", Phase.Hang, ItemKind.Unit, "Center support clear",
            "Center support clear of the brackets and of their screws. Where the sheet was not read for the width from which on there is one, ask it.",
            [])
        {
            Applies = unit => unit.NeedsCentreSupport != false,
            Undecided = unit => unit.NeedsCentreSupport is null,
            UndecidedSince = 3,
        },
        new("lead-in-front", Phase.Hang, ItemKind.Unit, "Lead brought in front",
            "Bring the cable in front of the unit where it can be reached later.",
            [])
        {
            Applies = unit => unit.OnPanel,
        },
        new("clicked-in", Phase.Hang, ItemKind.Unit, "Clicked in",
            "Pull on both ends: it must not come out. Lay a level on it.",
            [UnitFacts.OutOfLevel])
        {
            Later = ImmutableDictionary<Fact, int>.Empty.Add(UnitFacts.OutOfLevel, 2),
        },
        new("cords-safe", Phase.Hang, ItemKind.Unit, "Cords and chains safe for a child",
            "Move it from end to end and look for whatever a child could put its head into; the local rules on cords govern.",
            [UnitFacts.FreeCord, UnitFacts.CordHeldBy, UnitFacts.CordConfirmedBy])
        {
            Since = 2,
        },
        new("moves-free", Phase.Hang, ItemKind.Unit, "Moves freely",
            "By hand, without power: nothing rubs. No loose cord or cable loop within a child's reach.",
            []),
    ];
}

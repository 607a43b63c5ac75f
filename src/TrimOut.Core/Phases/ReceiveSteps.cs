using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Boxes against windows.</summary>
internal static class ReceiveSteps
{
    public static readonly ImmutableArray<Step> All =
    [
        new("box-matched", Phase.Receive, ItemKind.Unit, "Box matched",
            "Read the label, the size, the fabric and the color on the box.",
            [UnitFacts.BoxLabel, UnitFacts.DeliveredWidth, UnitFacts.DeliveredHeight, UnitFacts.SizeReadFrom, UnitFacts.FinishAsOrdered])
        {
            Later = ImmutableDictionary<Fact, int>.Empty.Add(UnitFacts.FinishAsOrdered, 2).Add(UnitFacts.SizeReadFrom, 5),
            OnlyWhere = ImmutableDictionary<Fact, Func<Subject, bool>>.Empty
                .Add(UnitFacts.SizeReadFrom, subject => subject is Unit unit && ReceivedWidth.IsOfLabelOrUncut(unit)),
        },
        new("looked-over", Phase.Receive, ItemKind.Unit, "Checked for damage",
            "Open the box before you sign for it; write none where there is none. See at which end the lead leaves.",
            [UnitFacts.Damage, UnitFacts.LeadCameAt])
        {
            Later = ImmutableDictionary<Fact, int>.Empty.Add(UnitFacts.LeadCameAt, 2),
        },
        new("serial-noted", Phase.Receive, ItemKind.Unit, "Serial noted",
            "From the unit, not from the box.",
            [UnitFacts.Serial]),
    ];
}

using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The lead is ordered on the other side than the cable.</summary>
public sealed class OrderedForTheOtherLead : Fault
{
    public override string Goes => "the lead is ordered on the other side than the cable";

    public override string Costs => "a lead in sight across the whole head";

    public override Stage In => Stage.Sized;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        house.Slips.Does(Stage.Sized, i => i.Book.Put(unit.Key, (UnitFacts.LeadSide, unit.Lead == Side.Left ? "right" : "left")));
        return From(Stage.Sized, unit.Key);
    }
}

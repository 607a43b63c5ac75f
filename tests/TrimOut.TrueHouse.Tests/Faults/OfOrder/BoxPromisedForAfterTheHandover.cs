using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The maker promises a box for a day after the handover, and nobody holds the two together.</summary>
public sealed class BoxPromisedForAfterTheHandover : Fault
{
    public override string Goes => "the maker promises a box for a day after the handover, and nobody holds the two together";

    public override string Costs => "a window without its covering when the owner moves in";

    public override Stage In => Stage.Ordered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.One(dice) is not { } unit)
            return null;
        var late = Installer.Day(house.Days[Stage.Handover].AddDays(30));
        house.Slips.Does(Stage.Ordered, i => i.Book.Put(unit.Key, (UnitFacts.ExpectedOn, late)));
        return At(unit.Key, (unit.Key, UnitFacts.ExpectedOn), (Book.JobItself, HouseFacts.HandoverOn));
    }
}

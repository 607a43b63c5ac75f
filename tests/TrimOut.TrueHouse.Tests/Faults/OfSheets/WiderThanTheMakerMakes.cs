using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>A window is wider than the maker makes this kind.</summary>
public sealed class WiderThanTheMakerMakes : Fault
{
    public override string Goes => "a window is wider than the maker makes this kind";

    public override string Costs => "a plan that ends on the day of the order, with the cable in the wall";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().MaxBy(u => u.Opening.Finished.Width) is not { } unit)
            return null;
        unit.Kind.Widest = house.OnTape(unit.Opening.Finished.Width - dice.Between(15, 60));
        return At(unit.Key, (unit.Kind.Name, CoveringKindFacts.Widest), (unit.Opening.Tag, WindowFacts.RoughWidth));
    }
}

using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>A window is wider than the maker makes this kind.</summary>
public sealed class WiderThanTheMakerMakes : Fault
{
    public override string Goes => "a window is wider than the maker makes this kind";

    public override string Costs => "a plan that ends on the day of the order, with the cable in the wall";

    public override Stage In => Stage.Sheets;

    public override string WouldShow => "the widest and the highest that the kind is made, on its sheet";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Inside().MaxBy(u => u.Opening.Finished.Width) is { } unit ? Unseen(unit.Key) : null;
    }
}

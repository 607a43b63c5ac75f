using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>The width that this maker asks for is the made width, and it is ordered like an opening.</summary>
public sealed class MakerTakesNothingOff : Fault
{
    public override string Goes => "the width that this maker asks for is the made width, and it is ordered like an opening";

    public override string Costs => "every unit of the kind jams in its reveal";

    public override Stage In => Stage.Sheets;

    public override string WouldShow =>
        "on the sheet of the kind, for each mount: whether the ordered width is the opening or the made width, and what comes off";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Select(u => u.Kind).Distinct().One(dice) is not { } kind)
            return null;
        kind.Deduction = 0;
        return Unseen(house.About(kind));
    }
}

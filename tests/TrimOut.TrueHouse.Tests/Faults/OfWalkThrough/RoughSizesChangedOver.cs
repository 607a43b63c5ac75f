using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>Rough width and rough height are typed into each other's field.</summary>
public sealed class RoughSizesChangedOver : Fault
{
    public override string Goes => "rough width and rough height are typed into each other's field";

    public override string Costs => "tails, cable and head covers reckoned for another window";

    public override Stage In => Stage.WalkThrough;

    public override IReadOnlyList<string> DoNotNameIt => ["tail-under-half-width", "tail-under-whole-width", "tail-short-of-motor", "cable-short-on-hand",
        "entry-under-centre-support", "entry-under-middle-screw"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Where(u => Math.Abs(u.Opening.Rough.Width - u.Opening.Rough.Height) > 200).One(dice) is not { } unit)
            return null;
        var (tag, rough) = (unit.Opening.Tag, unit.Opening.Rough);
        house.Slips.Writes(tag, WindowFacts.RoughWidth, house.Typed(rough.Height));
        house.Slips.Writes(tag, WindowFacts.RoughHeight, house.Typed(rough.Width));
        return At(tag, (tag, WindowFacts.RoughWidth), (tag, WindowFacts.RoughHeight), (tag, WindowFacts.WidthTop)).Of(200, 60);
    }
}

using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A window gets another tag once its cable is labeled.</summary>
public sealed class TagChangedOnceCablesAreLabeled : Fault
{
    public override string Goes => "a window gets another tag once its cable is labeled";

    public override string Costs => "a cable in the mechanical room that carries the tag of no window";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Opening.Units.Count == 1).One(dice) is not { } unit)
            return null;
        // The tag that the window has since stands on its box.
        unit.BoxLabel = "N" + unit.Opening.Tag;
        house.Slips.Does(Stage.Pulled, i => i.Book.Correct(unit.Opening.Tag, WindowFacts.Tag, unit.BoxLabel));
        return From(Stage.Pulled, unit.Key);
    }
}

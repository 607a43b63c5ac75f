using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>A colour is changed here after the maker acknowledged the order, and nobody calls.</summary>
public sealed class ColourChangedAfterTheAcknowledgement : Fault
{
    public override string Goes => "a color is changed here after the maker acknowledged the order, and nobody calls";

    public override string Costs => "a box with what was acknowledged, weeks later";

    public override Stage In => Stage.Ordered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Where(u => u.Opening.Units.Count == 1).One(dice) is not { } unit)
            return null;
        house.Slips.Does(Stage.Ordered, i => i.Book.Correct(unit.Key, UnitFacts.Colour, unit.Colour == "Moss" ? "Chalk" : "Moss"));
        return From(Stage.Ordered, unit.Key);
    }
}

using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfOrder;

/// <summary>The order is sent, a colour is changed here, and then the maker's answer to what was sent comes.</summary>
public sealed class ColourChangedBeforeTheAcknowledgement : Fault
{
    public override string Goes => "a color is changed here between the order and its acknowledgement, and nobody calls";

    public override string Costs => "a box with what was sent, under a number that seems to stand for what is written";

    public override Stage In => Stage.Ordered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Units.Where(u => u.Opening.Units.Count == 1).One(dice) is not { } unit)
            return null;
        house.Slips.LeavesOut(unit.Key, UnitFacts.Acknowledgement);
        house.Slips.Does(Stage.Ordered, i => i.Book.Correct(unit.Key, UnitFacts.Colour, unit.Colour == "Moss" ? "Chalk" : "Moss"));
        house.Slips.Does(Stage.Ordered, i => i.Book.Correct(unit.Key, UnitFacts.Acknowledgement, $"A-{unit.Key}"));
        return From(Stage.Ordered, unit.Key);
    }
}

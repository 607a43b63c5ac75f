using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfHang;

/// <summary>Brackets are screwed into plasterboard alone.</summary>
public sealed class ScrewedIntoPlasterboard : Fault
{
    public override string Goes => "brackets are screwed into plasterboard alone";

    public override string Costs => "a unit that comes down";

    public override Stage In => Stage.Hung;

    public override string WouldShow => "what the brackets are fixed into, unit by unit";

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Units.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}

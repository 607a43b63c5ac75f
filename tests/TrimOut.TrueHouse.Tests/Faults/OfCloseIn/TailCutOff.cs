using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>The plasterer cuts a tail off.</summary>
public sealed class TailCutOff : Fault
{
    public override string Goes => "the plasterer cuts a tail off";

    public override string Costs => "a splice inside the opening, or a new cable";

    public override Stage In => Stage.CloseIn;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().One(dice) is not { } unit)
            return null;
        unit.Cable!.TailFound = unit.Opening.Finished.Width * 0.3;
        return At(unit.Key, (unit.Key, RunFacts.TailFound)).Of(unit.Opening.Finished.Width * 0.2, house.TapeError);
    }
}

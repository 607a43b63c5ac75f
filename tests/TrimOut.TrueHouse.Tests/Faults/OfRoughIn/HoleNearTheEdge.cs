using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A hole is bored near the face of a stud and gets no plate.</summary>
public sealed class HoleNearTheEdge : Fault
{
    public override string Goes => "a hole is bored near the face of a stud and gets no plate";

    public override string Costs => "a drywall screw through the cable";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        (unit.Cable!.HoleEdge, unit.Cable.Plated) = (18, false);
        return At(unit.Key, (unit.Key, RunFacts.HoleEdge), (unit.Key, RunFacts.NailPlates)).Of(13.75, house.TapeError);
    }
}

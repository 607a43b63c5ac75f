using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A panel is live and nobody licensed is named for its mains.</summary>
public sealed class MainsUnsigned : Fault
{
    public override string Goes => "a panel is live and nobody licensed is named for its mains";

    public override string Costs => "an owner without insurance";

    public override Stage In => Stage.Powered;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        house.Panels[0].Signed = false;
        return From(Stage.Powered, "P1");
    }
}

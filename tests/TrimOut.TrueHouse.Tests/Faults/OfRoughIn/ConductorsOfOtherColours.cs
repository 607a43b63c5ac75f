using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>The cable has two white conductors.</summary>
public sealed class ConductorsOfOtherColours : Fault
{
    public override string Goes => "the cable has two white conductors";

    public override string Costs => "wires changed over at every second window";

    public override Stage In => Stage.Pulled;

    public override string WouldShow => "the colours of the conductors, and which of them is plus, for each cable";

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        return house.Wired.One(dice) is { } unit ? Unseen(unit.Key) : null;
    }
}

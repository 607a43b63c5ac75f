using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>There is less cable on hand than the ways need.</summary>
public sealed class CableShortOnHand : Fault
{
    public override string Goes => "there is less cable on hand than the ways need";

    public override string Costs => "the last run waits for a box, with the drywall crew at the door";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.GroupBy(u => u.Cable!.Sheet).OrderByDescending(g => g.Sum(u => u.Cable!.LegsMetres)).First() is not { } pulled)
            return null;
        house.Boxes[pulled.Key.Name] = [Math.Floor(pulled.Sum(u => u.Cable!.LegsMetres) * 0.7)];
        return At(pulled.Key.Name, [(pulled.Key.Name, CableTypeFacts.OnHand), .. pulled.SelectMany(u => u.Legs())]);
    }
}

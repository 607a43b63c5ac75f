using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A hub is replaced, and one unit is not paired with the new one.</summary>
public sealed class NotPairedWithTheNewHub : Fault
{
    public override string Goes => "a hub is replaced, and one unit is not paired with the new one";

    public override string Costs => "another visit";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.To == ItemKind.Hub) is not { } service
            || house.Units.Where(u => u.Hub == service.Name).ToList() is not [_, ..] units)
            return null;
        var unit = dice.Of(units);
        service.NotDoneAgain.Add((unit.Key, Phase.Pair));
        return From(Stage.Service, unit.Key);
    }
}

using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A remote is replaced, and one of its units is not paired with the new one.</summary>
public sealed class NotPairedWithTheNewRemote : Fault
{
    public override string Goes => "a remote is replaced, and one of its units is not paired with the new one";

    public override string Costs => "another visit";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.To == ItemKind.Remote) is not { } service
            || house.Remotes.First(r => r.Name == service.Name).Moves is not [_, ..] units)
            return null;
        var unit = dice.Of(units);
        service.NotDoneAgain.Add((unit.Key, Phase.Pair));
        return From(Stage.Service, unit.Key);
    }
}

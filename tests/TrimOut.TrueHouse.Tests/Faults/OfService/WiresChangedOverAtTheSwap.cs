using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A wired unit is replaced, and its wires are joined the wrong way round.</summary>
public sealed class WiresChangedOverAtTheSwap : Fault
{
    public override string Goes => "a wired unit is replaced, and its wires are joined the wrong way round";

    public override string Costs => "a motor that runs the wrong way, or never again";

    public override Stage In => Stage.Service;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.To == ItemKind.Unit && house.Wired.Any(u => u.Key == s.Name)) is not { } service)
            return null;
        service.Changes = truth => truth.Units.First(u => u.Key == service.Name).WiresChangedOver = true;
        return From(Stage.Service, service.Name);
    }
}

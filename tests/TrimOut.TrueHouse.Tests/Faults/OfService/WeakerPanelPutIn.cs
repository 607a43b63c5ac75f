using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A panel is replaced by one that gives half of the volts.</summary>
public sealed class WeakerPanelPutIn : Fault
{
    public override string Goes => "a panel is replaced by one that gives half of the volts";

    public override string Costs => "motors that stall, and another panel";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.To == ItemKind.Panel && house.Wired.Any(u => u.Panel?.Name == s.Name)) is not { } service)
            return null;
        service.Changes = truth => truth.Panels.First(p => p.Name == service.Name).Volts /= 2;
        return From(Stage.Service, [service.Name, .. house.Wired.Where(u => u.Panel?.Name == service.Name).Select(u => u.Key)]);
    }
}

using TrimOut.Core.Houses;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A panel is replaced, and nobody says that a licensed electrician connected it.</summary>
public sealed class PanelReplacedWithoutAnElectrician : Fault
{
    public override string Goes => "a panel is replaced, and nobody says that a licensed electrician connected it";

    public override string Costs => "mains work that nobody answers for";

    public override Stage In => Stage.Service;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.To == ItemKind.Panel) is not { } service)
            return null;
        service.Changes = truth => truth.Panels.First(p => p.Name == service.Name).Signed = false;
        return From(Stage.Service, service.Name);
    }
}

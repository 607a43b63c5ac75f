using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A unit or its motor is replaced, and its limits are not set.</summary>
public sealed class LimitsNotSetAgain : Fault
{
    public override string Goes => "a unit or its motor is replaced, and its limits are not set";

    public override string Costs => "cloth that runs over its end, and a motor that fails again";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.To == ItemKind.Unit) is not { } service)
            return null;
        service.NotDoneAgain.Add((service.Name, Phase.Limits));
        return From(Stage.Service, service.Name);
    }
}

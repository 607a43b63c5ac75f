using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A unit is replaced, and nobody reads the serial of the new one.</summary>
public sealed class NewSerialNotRead : Fault
{
    public override string Goes => "a unit is replaced, and nobody reads the serial of the new one";

    public override string Costs => "the next claim, for a serial that nobody has";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.Serial is not null) is not { } service)
            return null;
        service.Serial = null;
        return From(Stage.Service, service.Name);
    }
}

using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A unit is replaced, and the serial of the old one is written for the new one.</summary>
public sealed class OldSerialWrittenAgain : Fault
{
    public override string Goes => "a unit is replaced, and the serial of the old one is written for the new one";

    public override string Costs => "the next claim, for a unit that was sent back";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.Serial is not null) is not { } service)
            return null;
        service.Serial = house.Units.First(u => u.Key == service.Name).Serial;
        return From(Stage.Service, service.Name);
    }
}

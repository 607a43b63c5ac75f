using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A unit is replaced, and the serial of another unit of the house is written for it.</summary>
public sealed class SerialOfANeighborWritten : Fault
{
    public override string Goes => "a unit is replaced, and the serial of another unit of the house is written for it";

    public override string Costs => "a claim that the maker refuses";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.Serial is not null) is not { } service
            || house.Units.Where(u => u.Key != service.Name).ToList() is not [_, ..] others)
            return null;
        var other = dice.Of(others);
        service.Serial = other.Serial;
        return From(Stage.Service, service.Name, other.Key);
    }
}

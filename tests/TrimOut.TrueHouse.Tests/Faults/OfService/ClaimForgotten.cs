using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>A warranty claim is made, and nobody asks what it came to.</summary>
public sealed class ClaimForgotten : Fault
{
    public override string Goes => "a warranty claim is made, and nobody asks what it came to";

    public override string Costs => "the price of a unit that the maker would have paid";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.Claim is not null) is not { } service)
            return null;
        service.Outcome = null;
        return From(Stage.Service, service.Name);
    }
}

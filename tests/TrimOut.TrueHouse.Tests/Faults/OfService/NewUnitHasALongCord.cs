using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>The unit that was sent in place of another has a cord that hangs free.</summary>
public sealed class NewUnitHasALongCord : Fault
{
    public override string Goes => "the unit that was sent in place of another has a cord that hangs free";

    public override string Costs => "a child can be strangled by it";

    public override Stage In => Stage.Service;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.Serial is not null) is not { } service)
            return null;
        service.Changes = truth => truth.Units.First(u => u.Key == service.Name).FreeCord = 420;
        return From(Stage.Service, service.Name);
    }
}

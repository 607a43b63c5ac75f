using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfService;

/// <summary>The year of a service is written wrong: by its day the unit was replaced before it was hung.</summary>
public sealed class ServiceBeforeItHung : Fault
{
    public override string Goes => "the year of a service is written wrong: by its day the unit was replaced before it was hung";

    public override string Costs => "a claim that the maker refuses";

    public override Stage In => Stage.Service;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Services.FirstOrDefault(s => s.Serial is not null) is not { } service)
            return null;
        service.On = service.On.AddYears(-1);
        return From(Stage.Service, service.Name);
    }
}

using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>What the leads of the meter add is neither taken off nor written down.</summary>
public sealed class LeadsLeftIn : Fault
{
    public override string Goes => "what the leads of the meter add is neither taken off nor written down";

    public override string Costs => "a joint that is not there is looked for, or one that is there is taken for the leads";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.MeterLeads < 0.2)
            return null;
        house.Slips.Writes(Book.JobItself, HouseFacts.MeterLeads, "0");
        var unit = house.Wired.MinBy(u => u.Cable!.Metres)!;
        return At(unit.Key, [(unit.Key, RunFacts.FirstLoop), .. unit.Legs()]).And([.. house.Wired.Select(u => u.Key)])
            .Of(house.MeterLeads, 2 * house.LoopError(unit));
    }
}

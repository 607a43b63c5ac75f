using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>The leads touch each other at the near end, and a short run reads what the leads alone read.</summary>
public sealed class MeterReadsItsOwnLeads : Fault
{
    public override string Goes => "the leads touch each other at the near end, and a short run reads what the leads alone read";

    public override string Costs => "a cable that was never tested";

    public override Stage In => Stage.Pulled;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        var cable = unit.Cable!;
        cable.Stretch(Math.Max(1.2, 4 - cable.TailAtPanel - (cable.TailAtWindow / 1000)));
        house.Slips.Writes(unit.Key, RunFacts.FirstLoop, Installer.Number(house.MeterLeads));
        return At(unit.Key, (unit.Key, RunFacts.FirstLoop)).Of(cable.Ohms(Stage.Sheets, house.CableAtFirstTest), 0.06);
    }
}

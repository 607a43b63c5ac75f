using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A second unit is hung on the cable of the first, where the sheet allows one.</summary>
public sealed class TwoUnitsOnOneCable : Fault
{
    public override string Goes => "a second unit is hung on the cable of the first, where the sheet allows one";

    public override string Costs => "two motors that start together and stall";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Inside().Two(dice) is not var (first, second))
            return null;
        house.Slips.Does(Stage.Routed, i => i.Book.Put(second.Key, (RunFacts.BranchesOff, first.Key)));
        return At(second.Key, (second.Key, RunFacts.BranchesOff), (house.PanelSheets[0].Name, PanelTypeFacts.UnitsPerOutput)).And(first.Key);
    }
}

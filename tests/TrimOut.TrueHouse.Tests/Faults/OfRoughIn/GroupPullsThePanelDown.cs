using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A group of units draws more together than the panel gives.</summary>
public sealed class GroupPullsThePanelDown : Fault
{
    public override string Goes => "a group of units draws more together than the panel gives";

    public override string Costs => "all of them stop half way, and nobody thinks of the panel";

    public override Stage In => Stage.Routed;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Panels.Count > 1)
            return null;
        var group = house.Wired.GroupBy(u => u.Opening.Room).MaxBy(g => g.Count())!;
        if (group.Count() < 2 || group.Sum(u => u.Draws()) * 0.8 < house.Wired.Max(u => u.Draws()))
            return null;
        foreach (var unit in house.Units)
            unit.Group = group.Contains(unit) ? "All of the room" : null;
        house.PanelSheets[0].Total = Math.Round(group.Sum(u => u.Draws()) * 0.8, 2);
        return At("P1", (group.First().Key, UnitFacts.Group), (house.PanelSheets[0].Name, PanelTypeFacts.TotalCurrent), ("P1", PanelFacts.Type));
    }
}

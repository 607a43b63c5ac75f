using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfLimits;

/// <summary>One preset on the remotes of two rooms moves more than the panel gives.</summary>
public sealed class PresetOverTwoRemotesPullsThePanelDown : Fault
{
    public override string Goes => "one preset on the remotes of two rooms moves more than the panel gives";

    public override string Costs => "all of them stop half way, every evening";

    public override Stage In => Stage.Limits;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Panels.Count > 1)
            return null;
        var rooms = house.Remotes.Select(r => r.Moves.Where(house.Wired.Contains).Sum(u => u.Draws())).ToList();
        if (rooms.Sum() < rooms.Max() * 1.15 || rooms.Max() < house.Wired.Max(u => u.Draws()))
            return null;
        foreach (var unit in house.Units)
            unit.Group = null;
        house.PanelSheets[0].Total = Math.Round(rooms.Max() * 1.05, 2);
        var presets = house.Remotes.Select(r => ($"{r.Name}/Evening", (Fact)PresetFacts.Position));
        return At("P1", [.. presets, (house.PanelSheets[0].Name, PanelTypeFacts.TotalCurrent)]).And([.. house.Remotes.Select(r => r.Name)]);
    }
}

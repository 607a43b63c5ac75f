using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>All that one press of a remote moves draws more than the panel gives.</summary>
public sealed class RemotePullsThePanelDown : Fault
{
    public override string Goes => "all that one press of a remote moves draws more than the panel gives";

    public override string Costs => "all of them stop half way, and nobody thinks of the panel";

    public override Stage In => Stage.Paired;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var remote = house.Remotes.MaxBy(r => r.Moves.Where(house.Wired.Contains).Sum(u => u.Draws()))!;
        var together = remote.Moves.Where(house.Wired.Contains).Sum(u => u.Draws());
        if (house.Panels.Count > 1 || together * 0.85 < house.Wired.Max(u => u.Draws()))
            return null;
        foreach (var unit in house.Units)
            unit.Group = null;
        house.PanelSheets[0].Total = Math.Round(together * 0.85, 2);
        return At(remote.Name, (remote.Name, RemoteFacts.Moves), (house.PanelSheets[0].Name, PanelTypeFacts.TotalCurrent), ("P1", PanelFacts.Type)).And("P1");
    }
}

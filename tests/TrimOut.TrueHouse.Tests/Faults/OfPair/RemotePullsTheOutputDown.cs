using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPair;

/// <summary>One press of a remote starts two units that share an output and ask too much of it together.</summary>
public sealed class RemotePullsTheOutputDown : Fault
{
    public override string Goes => "one press of a remote starts two units that share an output and ask too much of it together";

    public override string Costs => "two units that stop as if they were broken";

    public override Stage In => Stage.Paired;

    public override bool AsksForAStop => true;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        var pairs = house.Remotes.Select(r => r.Moves.Where(u => u.Opening.Units.Count == 1 && house.Wired.Contains(u)).Two(dice));
        if (pairs.FirstOrDefault(p => p is not null) is not var (first, second))
            return null;
        var sheet = house.PanelSheets[0];
        sheet.UnitsPerOutput = 2;
        sheet.PerOutput = Math.Round(Math.Max((first.Draws() + second.Draws()) * 0.9, house.Wired.Max(u => u.Draws())), 2);
        if (sheet.PerOutput > (first.Draws() + second.Draws()) * 0.95 || sheet.PerOutput > ClassTwo.MostOnNameplate(sheet.Volts))
            return null;
        foreach (var unit in house.Units)
            unit.Group = null;
        (second.Panel, second.Output) = (first.Panel, first.Output);
        return At(first.Key, (first.Opening.Room.Remote, RemoteFacts.Moves), (first.Key, RunFacts.Output), (sheet.Name, PanelTypeFacts.OutputCurrent))
            .And(second.Key);
    }
}

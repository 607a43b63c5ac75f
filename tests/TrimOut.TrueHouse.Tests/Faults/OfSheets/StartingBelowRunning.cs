using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfSheets;

/// <summary>The starting current of a kind is typed a place too small, less than it draws while it runs.</summary>
public sealed class StartingBelowRunning : Fault
{
    public override string Goes => "the starting current of a kind is typed a place too small, less than it draws while it runs";

    public override string Costs => "a panel that looks strong enough and is not";

    public override Stage In => Stage.Sheets;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.UsedKind(dice) is not { } kind)
            return null;
        house.Slips.Writes(kind.Name, CoveringKindFacts.StartingCurrent, Installer.Number(Math.Round(kind.Running * 0.4, 2)));
        return At(kind.Name, (kind.Name, CoveringKindFacts.StartingCurrent), (kind.Name, CoveringKindFacts.RunningCurrent)).And(house.About(kind));
    }
}

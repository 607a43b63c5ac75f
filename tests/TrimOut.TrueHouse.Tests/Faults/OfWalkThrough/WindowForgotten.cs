using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfWalkThrough;

/// <summary>A window is not walked past, and nobody writes it down.</summary>
public sealed class WindowForgotten : Fault
{
    public override string Goes => "a window is not walked past, and nobody writes it down";

    public override string Costs => "a window without a cable in a closed wall";

    public override Stage In => Stage.WalkThrough;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Openings.Where(o => !o.LeftOut && o.Units.Count == 1 && house.Covered().Count(c => c.Room == o.Room) > 1).One(dice) is not { } opening)
            return null;
        house.Openings.Remove(opening);
        foreach (var remote in house.Remotes)
        {
            remote.Moves.RemoveAll(u => u.Opening == opening);
            foreach (var units in remote.Presets.Values)
                units.RemoveAll(u => u.Opening == opening);
        }
        house.NotWalkedPast = 1;
        return At(Book.JobItself, (Book.JobItself, HouseFacts.Openings)).And(opening.Tag);
    }
}

using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>There is cable enough in all, and no box that holds the longest run whole.</summary>
public sealed class NoBoxHoldsTheRun : Fault
{
    public override string Goes => "there is cable enough in all, and no box that holds the longest run whole";

    public override string Costs => "a splice in a wall, or a box that is sent for on the last day";

    public override Stage In => Stage.Routed;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.MaxBy(u => u.Cable!.LegsMetres) is not { } unit)
            return null;
        var (name, all) = (unit.Cable!.Sheet.Name, house.Boxes[unit.Cable.Sheet.Name].Sum());
        var each = Math.Floor(unit.Cable.LegsMetres * 0.8);
        house.Boxes[name] = [.. Enumerable.Repeat(each, Math.Min(9, (int)Math.Ceiling(all / each)))];
        return At(name, [($"{name[..5]}1", BoxFacts.Left), .. unit.Legs()]).And(unit.Key, name[..5]);
    }
}

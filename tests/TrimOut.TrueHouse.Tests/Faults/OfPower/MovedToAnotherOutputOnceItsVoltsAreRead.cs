using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfPower;

/// <summary>A run is moved to another output once its volts are read.</summary>
public sealed class MovedToAnotherOutputOnceItsVoltsAreRead : Fault
{
    public override string Goes => "a run is moved to another output once its volts are read";

    public override string Costs => "volts and polarity that nobody read on the output it is on";

    public override Stage In => Stage.Powered;

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.Panel is not null).One(dice) is not { } unit)
            return null;
        var taken = house.Wired.Where(u => u.Panel == unit.Panel).Select(u => u.Output).ToHashSet();
        var free = Enumerable.Range(1, unit.Panel!.Sheet.Outputs).FirstOrDefault(o => !taken.Contains(o));
        if (free == 0)
            return null;
        house.Slips.Does(Stage.Powered, i => i.Book.Correct(unit.Key, RunFacts.Output, Recording.Installer.Number(free)));
        return From(Stage.Powered, unit.Key);
    }
}

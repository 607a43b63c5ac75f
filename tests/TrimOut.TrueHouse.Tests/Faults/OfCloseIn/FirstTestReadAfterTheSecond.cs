using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfCloseIn;

/// <summary>The first test is forgotten before the drywall, and made up for once the second one is done.</summary>
public sealed class FirstTestReadAfterTheSecond : Fault
{
    public override string Goes => "the first test of a cable is read days after the second one, behind the drywall, to fill in its line";

    public override string Costs => "two readings of one day that show nothing of what the drywall did";

    public override Stage In => Stage.Measured;

    // They name that it was not read, and are content once it is.
    public override IReadOnlyList<string> DoNotNameIt => ["loop-test-left-out", "step-passed-over", "step-without-evidence"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.One(dice) is not { } unit)
            return null;
        house.Slips.LeavesOut(unit.Key, RunFacts.FirstLoop);
        house.Slips.LeavesUnmarked(unit.Key, "tested-first");
        house.Slips.Does(Stage.Measured, i =>
        {
            i.Book.Correct(unit.Key, RunFacts.FirstLoop,
                i.Meter.Ohms(unit.Cable!.Ohms(Stage.CloseIn, house.CableAtSecondTest), house.MeterLeads, unit.Key, "second loop"));
            i.Book.Do(Core.Decisions.MarkStep.Done(i.Book.Unit(unit.Key), StepList.Find("tested-first")!).Value);
        });
        return From(Stage.Measured, unit.Key);
    }
}

using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class TailUnderWholeWidthTests
{
    private static readonly TailUnderWholeWidth Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtWindow, "30\""));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.TailAtWindow, "36\""));

    [Fact]
    public void ATailAsLongAsTheWindowIsFine() => Jobs.Roughed().Fine(Check, "W01");

    [Fact]
    public void ATailALittleShorterIsACaution() =>
        Assert.Equal("The tail is 35 63/64\"; the width is 36\".", Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "35 63/64").Fault(Check, "W01").Message);

    [Fact]
    public void HalfTheWindowIsStillThisCautionAndLessIsTheOther()
    {
        Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "18").Fault(Check, "W01");
        Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "17").Silent(Check, "W01");
    }

    [Fact]
    public void AnUnknownTailIsNotAPass() => Jobs.Roughed().Forget("W01", RunFacts.TailAtWindow).Lacks(Check, "W01", "tail at window");

    [Fact]
    public void WhatIsPulledIsWhatIsMissing() => Assert.Equal("Pull 6\" more to the window now, if there is cable to pull.",
        Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "30").Fault(Check, "W01").Mend);

    // Two parts of 18 in of an opening of 36: the second one's far end is 35 in from where its cable comes out, 1 in from the left jamb.
    [Fact]
    public void OfASecondUnitTheWayAlongTheHeadIsToldAndOfTheFirstTheWidth()
    {
        var job = Jobs.Roughed().Do(j => AddItems.Unit(j.House, j.House.FindTag("W01")!.Id)).Say("W01B", UnitFacts.EntrySide, "left")
            .Say("W01B", UnitFacts.EntryFromJamb, "1").Say("W01B", RunFacts.TailAtWindow, "34").Say("W01A", RunFacts.TailAtWindow, "16");
        Assert.Equal("The tail is 34\"; the way along the head to its far end is 35\".", job.Fault(Check, "W01B").Message);
        Assert.StartsWith("The tail is 16\"; the width is ", job.Fault(Check, "W01A").Message, System.StringComparison.Ordinal);
    }

    [Fact]
    public void TheWorkingTellsTheTailAndTheWidth() =>
        Assert.Equal("tail 30\", width 36\"", Jobs.Roughed().Say("W01", RunFacts.TailAtWindow, "30").Fault(Check, "W01").Worked);
}

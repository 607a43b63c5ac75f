using TrimOut.Core.Checks.Limits;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Limits;

public class BarOffSillTests
{
    private static readonly BarOffSill Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.CloseGap, "1/4\""));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.CloseGap, "1/8\""));

    [Fact]
    public void AnEighthStillTouches() => Jobs.Walked().Say("W01", UnitFacts.CloseGap, "1/8").Fine(Check, "W01");

    [Fact]
    public void MoreIsACaution() =>
        Assert.Equal("Closed, the bar stands 3/16\" above the sill.", Jobs.Walked().Say("W01", UnitFacts.CloseGap, "3/16").Fault(Check, "W01").Message);

    [Fact]
    public void OutsideThereMayBeNoSill() => Jobs.Walked().Say("W01", WindowFacts.Mount, "outside").Say("W01", UnitFacts.CloseGap, "1").Silent(Check, "W01");

    [Fact]
    public void AnUnknownGapIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "closed: bar above sill");

    [Fact]
    public void AUnitThatIsAFootShortTouchesNoSill()
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.OrderHeight, "48\"").Say("W01", UnitFacts.CloseGap, "0");
        Assert.Equal("It is 12\" shorter than its opening is high, and closed its bar is said to stand 0\" above the sill.",
            job.Fault(Check, "W01").Message);
        job.Say("W01", UnitFacts.OrderHeight, "57\"").Fine(Check, "W01");
    }

    [Fact]
    public void NorDoesItWithinAnEighth() => Assert.StartsWith("It is 12\" shorter",
        Jobs.Ordered().Say("W01", UnitFacts.OrderHeight, "48\"").Say("W01", UnitFacts.CloseGap, "1/8").Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void WhatCameCountsAndNotWhatWasOrdered()
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.OrderHeight, "57\"").Say("W01", UnitFacts.DeliveredHeight, "48\"").Say("W01", UnitFacts.CloseGap, "0");
        Assert.StartsWith("It is 12\" shorter", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
        job.Say("W01", UnitFacts.OrderHeight, "48\"").Say("W01", UnitFacts.DeliveredHeight, "57\"").Fine(Check, "W01");
    }
}

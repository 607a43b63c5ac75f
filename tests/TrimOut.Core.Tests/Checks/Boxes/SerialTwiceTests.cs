using TrimOut.Core.Checks.Boxes;
using TrimOut.Core.Facts;
using TrimOut.Core.Tests.Decisions;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Boxes;

public class SerialTwiceTests
{
    private static readonly SerialTwice Check = new();

    public static Example Finds => new(() => Two(), j => j.Say("W02", UnitFacts.Serial, "A 100"));

    public static Example Passes => new(() => Two(), j => j.Say("W02", UnitFacts.Serial, "A 101"));

    [Fact]
    public void EachWithItsOwnIsFine() => Two().Say("W02", UnitFacts.Serial, "A 101").Fine(Check, "W02");

    [Fact]
    public void OneForTwoIsACautionAtBothWhateverItsCase()
    {
        var job = Two().Say("W02", UnitFacts.Serial, "a 100");
        Assert.Equal("Serial a 100 also stands at W01.", job.Fault(Check, "W02").Message);
        Assert.Equal("Serial A 100 also stands at W02.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void TheSerialOfAUnitThatWasTakenOffIsACautionWhereverItStands()
    {
        var job = Two().Say("W02", UnitFacts.Serial, "A 101").Serve("W01 replaced, serial A 102");
        job.Fine(Check, "W01");
        Assert.Equal("Serial A 100 is that of a unit that was taken off (W01 replaced 2027-03-02).",
            job.Say("W02", UnitFacts.Serial, "A 100").Fault(Check, "W02").Message);
        Assert.Equal(2, Check.Run(job.Say("W01", UnitFacts.Serial, "A 100").House).Count(r => r.Subject.Id == job.Unit("W01").Id));
    }

    [Fact]
    public void AnUnknownSerialIsNotAPass() => Two().Lacks(Check, "W02", "serial");

    [Theory]
    [InlineData("none")]
    [InlineData("n/a")]
    [InlineData("-")]
    public void WhatSaysThatThereIsNoneIsNoSerial(string none) =>
        Two().Say("W01", UnitFacts.Serial, none).Say("W02", UnitFacts.Serial, none).Lacks(Check, "W02", "serial");

    private static TestJob Two() => Jobs.Ordered("W02", Jobs.Ordered()).Say("W01", UnitFacts.Serial, "A 100");
}

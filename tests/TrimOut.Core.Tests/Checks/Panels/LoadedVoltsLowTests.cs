using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class LoadedVoltsLowTests
{
    private static readonly LoadedVoltsLow Check = new();

    public static Example Finds => new(Own, j => j.Say("W01", RunFacts.LoadedVolts, "13.5"));

    public static Example Passes => new(Own, j => j.Say("W01", RunFacts.LoadedVolts, "13.8"));

    // 50 m of 1 mm2 solid at 20 C have 1.81 ohm out and back; 0.8 A lose 1.448 V of the 12 V that were read without load.
    // Two readings may be off by 0.5 % and 0.02 V each: 0.08 and 0.072 V.
    [Fact]
    public void WhatTheCableExplainsAndTwoReadingsMayBeOffIsFine() => Read("12", "10.4").Fine(Check, "W01");

    [Fact]
    public void MoreIsLostInASplice() =>
        Assert.Equal("10.399 V were read while it moved; 10.552 V are predicted: 0.153 V are lost outside the cable, in a splice most likely.",
            Read("12", "10.399").Fault(Check, "W01").Message);

    [Fact]
    public void TheReadingWithoutLoadIsWhereItStartsFrom() => Read("12.5", "10.7").Fault(Check, "W01");

    [Fact]
    public void AUnitThatWasNotReadWhileItMovedIsNotAPass() => Read("12", "11").Forget("W01", RunFacts.LoadedVolts).Lacks(Check, "W01", "loaded volts");

    [Fact]
    public void WithoutAReadingBeforeItNothingIsPredicted() => Read("12", "11").Forget("W01", RunFacts.OpenVolts).Lacks(Check, "W01", "open-circuit volts");

    private static TestJob Read(string open, string loaded) => Jobs.Walked("W01", Jobs.Metric())
        .SayOf("16/2", CableTypeFacts.Conductor, "1 mm2").SayOf("16/2", CableTypeFacts.Stranding, "solid").SayOf("", HouseFacts.ConductorTemperature, "20")
        .Say("W01", RunFacts.Cable, "16/2").Legs("W01", ("48 m", CablePlace.InWall)).Say("W01", RunFacts.TailAtWindow, "1000 mm")
        .Say("W01", RunFacts.TailAtPanel, "1000 mm")
        .Say("W01", RunFacts.OpenVolts, open).Say("W01", RunFacts.LoadedVolts, loaded);

    // At the least 0.4 of 1.448 V are lost, 0.579 V; the two readings may be off by 0.16 V together.
    [Theory]
    [InlineData("12")]
    [InlineData("11.9")]
    [InlineData("11.6")]
    public void HardlyLessThanWithoutLoadWasNotReadUnderLoad(string loaded) =>
        Assert.Equal($"{loaded} V were read while it moved and 12 V with nothing connected; the cable loses 0.579 V or more: it stood still, or was misread.",
            Read("12", loaded).Fault(Check, "W01").Message);

    [Fact]
    public void WhatTwoReadingsMayBeOffIsAllowed() => Read("12", "11.55").Fine(Check, "W01");

    [Fact]
    public void OneMeterForBothIsOffByLess()
    {
        var job = Read("12", "11.55").SayOf("Test house", HouseFacts.Meter, "Meter 1");
        job.Say("W01", RunFacts.OpenVolts, "12").Say("W01", RunFacts.LoadedVolts, "11.5").Fault(Check, "W01");
        job.Say("W01", RunFacts.LoadedVolts, "11.45").Fine(Check, "W01");
    }

    [Fact]
    public void ADeadOutputIsAnotherChecksToTell() => Read("0.02", "0.02").Fine(Check, "W01");

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Read("15", "14.5").SayOf("Invented supply", PanelTypeFacts.Supply, "15")
        .SayOf("Roller", CoveringKindFacts.LeastVolts, "13").SayOf("Roller", CoveringKindFacts.RunningCurrent, "0.6");

    // 0.8 A lose 1.448 V on the way; 1.601 V lost by 0.8 A are those of 2.001 ohm.
    [Fact]
    public void TheWorkingTellsWhatThePredictionIsMadeOf()
    {
        var worked = Read("12", "10.399").Fault(Check, "W01").Working!.Inputs;
        Assert.Equal(["open-circuit", "running current", "length, one way", "predicted", "read", "tolerance", "loop by these volts", "second loop test"],
            worked.Select(i => i.Name));
        Assert.Equal(["12 V", "0.8 A", "50 m", "10.552 V", "10.399 V", "0.152 V", "2.001 ohm", "not read"], worked.Select(i => i.Value));
        Assert.Contains(("second loop test", "1.81 ohm"), Read("12", "10.399").Say("W01", RunFacts.SecondLoop, "1.81").Fault(Check, "W01").Working!.Inputs);
    }

    [Fact]
    public void WhatThePredictionLacksIsNamed()
    {
        Read("12", "11").SayOf("Roller", CoveringKindFacts.RunningCurrent, "").Lacks(Check, "W01", "running current of Roller in the kit");
        Read("12", "11").Forget("W01", RunFacts.TailAtPanel).Lacks(Check, "W01", "tail at panel");
    }

    // Wires that are changed over are another check's to tell: the volts that are lost are the same.
    [Fact]
    public void WiresThatAreChangedOverLoseAsMuch()
    {
        Read("-12", "-10.4").Fine(Check, "W01");
        Read("-12", "-10.399").Fault(Check, "W01");
    }
}

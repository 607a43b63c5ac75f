using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class SheetContradictsItselfTests
{
    private static readonly SheetContradictsItself Check = new();

    public static Example Finds => new(() => new TestJob(), j => j.SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.4"));

    public static Example Passes => new(() => new TestJob(), j => j.SayOf("Roller", CoveringKindFacts.StartingCurrent, "1.2"));

    /// <summary>By sheet and fact: a value that is just possible, and one that is not.</summary>
    public static TheoryData<string, string, string, string> Limits => new()
    {
        { "Roller", CoveringKindFacts.LeastVolts.Name, "12", "12.001" },
        { "Roller", CoveringKindFacts.StartingCurrent.Name, "0.8", "0.799" },
        { "Roller", CoveringKindFacts.DepthFlush.Name, "2 1/2", "2 31/64" },
        { "Roller", CoveringKindFacts.GapMost.Name, "1/8", "7/64" },
        { "Invented supply", PanelTypeFacts.TotalCurrent.Name, "2.5", "2.499" },
        { "Roller", CoveringKindFacts.Widest.Name, "108", "107" },
    };

    [Theory]
    [MemberData(nameof(Limits))]
    public void TwoValuesThatAreAlikeAreFineAndPastEachOtherAStop(string sheet, string fact, string fine, string wrong)
    {
        var kind = sheet == "Roller" ? ItemKind.CoveringKind : ItemKind.PanelType;
        var said = FactTable.Of(kind).Single(f => f.Name == fact);
        Assert.IsType<Outcome.Fine>(new TestJob().SayOf(sheet, said, fine).Of(Check, sheet));
        Assert.IsType<Outcome.Found>(new TestJob().SayOf(sheet, said, wrong).Of(Check, sheet));
    }

    // Energy: what comes out is no more than what goes in. 10 V x 2.4 A is 24 W, which is 0.1 A at 240 V and 0.2 A at 120 V.
    [Theory]
    [InlineData("", "0.1", true)]
    [InlineData("", "0.099", false)]
    [InlineData("120 V", "0.2", true)]
    [InlineData("120 V", "0.199", false)]
    [InlineData("100-240 V, 50/60 Hz", "0.1", true)]
    [InlineData("100-240 V, 50/60 Hz", "0.099", false)]
    public void APanelGivesNoMoreThanItTakes(string mains, string input, bool fine)
    {
        var job = new TestJob().SayOf("Invented supply", PanelTypeFacts.Supply, "10").SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "1")
            .SayOf("Invented supply", PanelTypeFacts.TotalCurrent, "2.4")
            .SayOf("Invented supply", PanelTypeFacts.InputCurrent, input);
        if (mains.Length > 0)
            job.SayOf("Invented supply", PanelTypeFacts.InputVolts, mains);
        Assert.Equal(fine, job.Of(Check, "Invented supply") is Outcome.Fine);
    }

    /// <summary>By how an outside mount is ordered: what may come off it.</summary>
    [Theory]
    [InlineData("made", "0", true)]
    [InlineData("made", "1/64", false)]
    [InlineData("opening", "1/4", true)]
    public void WhatIsMadeAsItIsOrderedIsNoNarrower(string ordered, string off, bool fine)
    {
        var job = new TestJob().SayOf("Roller", CoveringKindFacts.OrderedOutside, ordered).SayOf("Roller", CoveringKindFacts.DeductionOutside, off);
        Assert.Equal(fine, job.Of(Check, "Roller") is Outcome.Fine);
        if (!fine)
        {
            Assert.Equal("Ordered width, outside: made. Deduction, outside: 1/64\". What is made as wide as it is ordered is no narrower than that.",
                job.FaultOf(Check, "Roller").Message);
        }
    }

    /// <summary>16/2 is two conductors of 16 AWG: common practice, no published source.</summary>
    [Theory]
    [InlineData("16/2", "16 AWG", true)]
    [InlineData("16/2", "18 AWG", false)]
    [InlineData("Box of 18/4 stranded", "18 AWG", true)]
    [InlineData("Box of 18/4 stranded", "14 AWG", false)]
    [InlineData("16/2", "1.5 mm2", false)]
    [InlineData("18/2 + 22/2", "22 AWG", true)]
    [InlineData("Bought 3/2026", "16 AWG", true)]
    [InlineData("Bell wire", "20 AWG", true)]
    public void ACableHasTheGaugeOfItsName(string name, string conductor, bool fine)
    {
        var job = new TestJob().SayOf("16/2", CableTypeFacts.Conductor, conductor).SayOf("16/2", CableTypeFacts.Name, name);
        Assert.Equal(fine, !Check.Run(job.House).Any(r => r.Subject.Kind == ItemKind.CableType && r.Outcome is Outcome.Found));
    }

    [Fact]
    public void BothLinesAreNamed() => Assert.Equal("Running current: 0.8 A. Starting current: 0.4 A. The first can't be more than the second.",
        new TestJob().SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.4").FaultOf(Check, "Roller").Message);

    [Fact]
    public void ASupportThatIsNeverNeededIsNoMoreThanTheWidestAndDoesNotWaitForIt() => Assert.IsType<Outcome.Fine>(
        new TestJob().SayOf("Roller", CoveringKindFacts.CentreFrom, "none").SayOf("Roller", CoveringKindFacts.Widest, "").Of(Check, "Roller"));

    [Fact]
    public void OneLineWithoutTheOtherIsNotAPass() =>
        Assert.Equal("motor volts", new TestJob().SayOf("Roller", CoveringKindFacts.MotorVolts, "").MissingOf(Check, "Roller"));

    [Fact]
    public void ASheetWithNothingToCompareSaysNothing() => Assert.DoesNotContain(Check.Run(new TestJob().House), r => r.Subject.Kind == ItemKind.CableType);

    // By its sheet 10 V x 2.4 A, 24 W; at 240 V 0.09 A are 21.6 W. Where one output is all that is said, it counts.
    [Theory]
    [InlineData("2.4")]
    [InlineData("")]
    public void WhatItGivesIsReckonedFromAllOutputsOrFromOne(string total)
    {
        var job = new TestJob().SayOf("Invented supply", PanelTypeFacts.Supply, "10").SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "2.4")
            .SayOf("Invented supply", PanelTypeFacts.TotalCurrent, "2.4").SayOf("Invented supply", PanelTypeFacts.InputCurrent, "0.09");
        if (total.Length == 0)
            job.SayOf("Invented supply", PanelTypeFacts.TotalCurrent, "");
        Assert.Equal("At 240 V from the mains it takes 21.6 W at the most, and its outputs give 24 W together.", job.FaultOf(Check, "Invented supply").Message);
    }

    [Fact]
    public void WhereNoVoltsAreWrittenItSaysWhatItTookForThem()
    {
        var job = new TestJob().SayOf("Invented supply", PanelTypeFacts.InputCurrent, "0.01");
        Assert.StartsWith("Taken as 240 V, for none is written: ", job.FaultOf(Check, "Invented supply").Mend!, StringComparison.Ordinal);
        job.SayOf("Invented supply", PanelTypeFacts.InputVolts, "240 V");
        Assert.StartsWith("Read both lines", job.FaultOf(Check, "Invented supply").Mend!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("yes")]
    [InlineData("banana")]
    [InlineData("5000 V")]
    public void WhatNamesNoVoltsIsRefused(string typed) => Assert.Equal(
        $"\"{typed}\" names no volts. Type what stands on the plate, such as 120 V, 100 to 240 V.",
        PanelTypeFacts.InputVolts.ReadTyped(typed, House.Empty).Reason);

    // 120 V x 0.2 A is 24 W. A number that no mains has says nothing.
    [Theory]
    [InlineData("120 V, 1000 VA", "0.199", false)]
    [InlineData("120 V, 1000 VA", "0.2", true)]
    [InlineData("999 V", "0.03", true)]
    public void OnlyANumberThatCanBeMainsIsTakenForVolts(string mains, string input, bool fine)
    {
        var job = new TestJob().SayOf("Invented supply", PanelTypeFacts.Supply, "10").SayOf("Invented supply", PanelTypeFacts.OutputCurrent, "1")
            .SayOf("Invented supply", PanelTypeFacts.TotalCurrent, "2.4").SayOf("Invented supply", PanelTypeFacts.InputVolts, mains)
            .SayOf("Invented supply", PanelTypeFacts.InputCurrent, input);
        Assert.Equal(fine, job.Of(Check, "Invented supply") is Outcome.Fine);
    }

    [Fact]
    public void EachLineWithoutItsOtherIsNamed() => Assert.Equal("motor volts; starting current",
        new TestJob().SayOf("Roller", CoveringKindFacts.MotorVolts, "").SayOf("Roller", CoveringKindFacts.StartingCurrent, "").MissingOf(Check, "Roller"));

    [Fact]
    public void TheSmallerOfTwoLinesIsAskedForAsTheLargerIs() =>
        Assert.Equal("minimum volts", new TestJob().SayOf("Roller", CoveringKindFacts.LeastVolts, "").MissingOf(Check, "Roller"));
}

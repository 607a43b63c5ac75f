using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Houses;

/// <summary>Which figures and which of their inputs have the mark of a value that nobody checked.</summary>
public class UncheckedInputsTests
{
    private static Figure Of(TestJob job, string name) => UnitFigures.Of(job.Unit("W01")).Single(f => f.Name == name);

    private static string Input(Figure figure, string name) => figure.Working.Inputs.Single(i => i.Name == name).Value;

    /// <summary>60 ft and 10 % of it, 3 ft and 6 ft: 75 ft. The table of 200 ft only permits that; one of 70 ft takes something off it.</summary>
    [Fact]
    public void ALengthRestsOnASheetOnlyWhereTheSheetTakesSomethingOffIt()
    {
        var job = Jobs.Roughed();
        Assert.Empty(job.Run("W01").UncheckedInNeeded);
        Assert.Equal("75 ft", Of(job, "Cable off a box").Value);
        job.SayOf("16/2", CableTypeFacts.LongestRun, "70 ft");
        Assert.Contains(CableTypeFacts.LongestRun, job.Run("W01").UncheckedInNeeded);
        Assert.Equal("70 ft\u00A0?", Of(job, "Cable off a box").Value);
    }

    [Fact]
    public void TheMarkStandsBehindTheInputThatNobodyChecked()
    {
        var job = Jobs.Roughed().WithPanel();
        job.Do(KitCheck.All(job.House, job.Run("W01").Cable!.Item)).Do(j => KitCheck.All(j.House, j.Unit("W01").Kind!.Item));
        var longest = Of(job, "Longest run");
        Assert.Equal(("200 ft", "12 V\u00A0?"), (Input(longest, "by the kit's table"), Input(longest, "supply")));
        job.SayOf("16/2", CableTypeFacts.LongestRun, "190 ft");
        Assert.Equal("190 ft\u00A0?", Input(Of(job, "Longest run"), "by the kit's table"));
        Assert.DoesNotContain(CableTypeFacts.LongestRun, Of(job, "Volts at the unit").Unchecked);
    }

    /// <summary>2 V at 1 A out and back: as on the list of cables, which shows it with ~.</summary>
    [Fact]
    public void WhereNeitherTableNorVoltsAreKnownTheLongestRunIsThatOfTheOwnBudget()
    {
        var job = Jobs.Roughed().SayOf("16/2", CableTypeFacts.LongestRun, "").SayOf("Roller", CoveringKindFacts.LeastVolts, "");
        Assert.Equal("not known", Of(job, "Longest run").Value);
        job.SayOf("", HouseFacts.DropAllowed, "2").SayOf("", HouseFacts.BudgetCurrent, "1");
        Assert.Matches(@"^~[0-9.]+ ft, by your own loop budget alone", Of(job, "Longest run").Value);
    }

    [Fact]
    public void AValueThatWasCheckedAndIsAnotherOneNowWasChangedSince()
    {
        var job = new TestJob();
        Item Roller() => job.House.ItemsOf(ItemKind.CoveringKind).First();
        Assert.False(SheetMark.IsChangedSince(Roller(), CoveringKindFacts.RunningCurrent));
        job.Do(j => KitCheck.All(j.House, Roller())).SayOf("Roller", CoveringKindFacts.RunningCurrent, "3");
        Assert.True(SheetMark.IsChangedSince(Roller(), CoveringKindFacts.RunningCurrent));
        // Who takes the mark off has changed no value.
        job.Do(j => KitCheck.Toggle(j.House, Roller(), CoveringKindFacts.StartingCurrent));
        Assert.False(SheetMark.IsChangedSince(Roller(), CoveringKindFacts.StartingCurrent));
    }

    /// <summary>Nothing that was typed is shown rounded, and what can't be kept is refused.</summary>
    [Fact]
    public void AValueWithManyDecimalsIsShownWholeOrRefused()
    {
        var job = new TestJob().SayOf("Roller", CoveringKindFacts.RunningCurrent, "1.80000000001");
        Assert.Equal("1.80000000001 A", CoveringKindFacts.RunningCurrent.ShowOf(job.House.ItemsOf(ItemKind.CoveringKind).First(), job.House));
        Assert.Contains("more decimals", CoveringKindFacts.RunningCurrent.ReadTyped("1.80000000000001", job.House).Reason!, StringComparison.Ordinal);
        Assert.Contains("thousandth", CoveringKindFacts.PairHold.ReadTyped("1.80001", job.House).Reason!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("120", "120 V")]
    [InlineData("100-240", "100-240 V")]
    [InlineData("100 to 240", "100 to 240 V")]
    [InlineData("100 to 240 V, 50/60 Hz", "100 to 240 V, 50/60 Hz")]
    [InlineData("230 V", "230 V")]
    public void AMainsVoltageOfFiguresAloneIsShownInVolts(string typed, string shown)
    {
        var job = new TestJob();
        var panel = job.House.ItemsOf(ItemKind.PanelType).Single();
        job.Do(SetFact.Typed(job.House, panel, PanelTypeFacts.InputVolts, typed));
        Assert.Equal(shown, PanelTypeFacts.InputVolts.ShowOf(job.House.Find(panel.Id)!, job.House));
    }
}

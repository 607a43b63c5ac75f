using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.CrewPapers;

/// <summary>What papers say where a figure is not known, was typed by nobody, or is of two sorts.</summary>
public class UnknownFiguresTests
{
    [Fact]
    public void ThePullSheetSaysThatRunsWaitForTheirLengthAndGivesNoFigureForThem()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W01", RunFacts.Cable, "16/2").Say("W02", RunFacts.Cable, "16/2");
        var page = PaperList.Find("pull-sheet")!.Page(FinishedHouse.Data(job.Scribe.Log));
        Assert.Equal("–", page.TableUnder("Cable needed").Single()[5]);
        var said = page.SaidUnder("16/2");
        Assert.Contains("2 runs wait to be cut and have no length yet: they may take more boxes.", said);
        Assert.DoesNotContain("Nothing of it waits to be cut.", said);
        Assert.Equal(["not yet", "not yet"], PaperList.Find("parts-list")!.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Cable").Select(r => r[1]));
    }

    [Fact]
    public void ThePullSheetNamesTheFiguresThatALengthWasMadeWithAndWhichOfThemNobodyTyped()
    {
        var job = new TestJob().Window("W01");
        Assert.Contains("10 % (what the program began with, typed by nobody)", Said(job), StringComparison.Ordinal);
        Assert.Contains("72\" (what the program began with, typed by nobody)", Said(job), StringComparison.Ordinal);
        job.SayOf("", HouseFacts.CableAllowance, "15").SayOf("", HouseFacts.PanelTail, "60");
        Assert.Contains("of 15 % for bends", Said(job), StringComparison.Ordinal);
        Assert.DoesNotContain("typed by nobody", Said(job), StringComparison.Ordinal);
    }

    [Fact]
    public void TheHangSheetKeepsTheSetbackOfTheSheetApartFromTheOneAsBuiltInTheUnitsOfTheHouse()
    {
        var job = new TestJob().Window("W01").SayOf("Roller", CoveringKindFacts.Setback, "1 7/16").Say("W01", UnitFacts.Setback, "50 mm");
        var text = PaperList.Find("hang-sheet")!.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown;
        Assert.Contains("Setback by the sheet", text, StringComparison.Ordinal);
        Assert.Contains("1 7/16\"", text, StringComparison.Ordinal);
        Assert.Contains("1 15/16\"", text, StringComparison.Ordinal);
        Assert.DoesNotContain("50 mm", text, StringComparison.Ordinal);
    }

    [Fact]
    public void TheHangSheetAsksTheSheetWhereItDoesNotSayFromWhichWidthOnThereIsACentreSupport()
    {
        List<string> Hung(TestJob job) => PaperList.Find("hang-sheet")!.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Kitchen").Single();
        var job = Measured();
        Assert.Equal("no\u00A0?", Hung(job)[8]);
        Assert.Equal("ask the sheet", Hung(job.SayOf("Roller", CoveringKindFacts.CentreFrom, ""))[8]);
        Assert.Equal("yes\u00A0?", Hung(job.SayOf("Roller", CoveringKindFacts.CentreFrom, "36"))[8]);
        Assert.Equal("no\u00A0?", Hung(job.SayOf("Roller", CoveringKindFacts.CentreFrom, "none").Say("W01", WindowFacts.WidthTop, ""))[8]);
    }

    [Fact]
    public void TheHangSheetGivesNoPositionByARoughSize()
    {
        string Text(TestJob job) => PaperList.Find("hang-sheet")!.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown;
        var rough = new TestJob().Window("W01").Say("W01", WindowFacts.RoughWidth, "36").Say("W01", WindowFacts.Mount, "inside");
        Assert.Matches(@"\| W01 +(\| ______ +){6}\|", Text(rough));
        Assert.Contains("no, by the rough size", Text(rough), StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\| W01 +(\| ______ +){3}\|", Text(Measured()));
    }

    private static TestJob Measured() => new TestJob().Window("W01").Say("W01", WindowFacts.Mount, "inside").Say("W01", WindowFacts.WidthTop, "36")
        .Say("W01", WindowFacts.WidthMiddle, "36").Say("W01", WindowFacts.WidthBottom, "36");

    private static string Said(TestJob job) =>
        string.Join('\n', PaperList.Find("pull-sheet")!.Page(FinishedHouse.Data(job.Scribe.Log)).SaidUnder("Home runs"));
}

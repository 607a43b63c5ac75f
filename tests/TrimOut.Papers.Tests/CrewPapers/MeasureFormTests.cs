using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Papers.CrewPapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.CrewPapers;

public class MeasureFormTests
{
    [Fact]
    public void TheFirstMeasureIsWrittenInInTheOrderInWhichTheWalkAsksForIt() =>
        Assert.Equal(StepList.Find("measured")!.Evidence, MeasureForm.WrittenIn);

    [Fact]
    public void WindowsStandInWalkingOrderWithABlankForEachFigureAndTheSecondMeasureApart()
    {
        var job = new TestJob().Window("W01").Window("W02");
        var page = MeasureForm.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        Assert.Equal(["Window W01", "Window W02"], page.QuerySelectorAll("th:first-child").Select(h => h.TextContent)
            .Where(h => h.StartsWith("Window ", StringComparison.Ordinal)));
        Assert.Equal([["Width: top, middle, bottom", "______", "______", "______"],
            ["Height: left, middle, right", "______", "______", "______"]], page.TableUnder("First measure"));
        var second = page.QuerySelector("h2#second-measure")!;
        Assert.DoesNotContain(page.QuerySelectorAll("h2#first-measure ~ *").TakeWhile(e => e != second),
            e => e.TextContent.Contains("Smallest", StringComparison.Ordinal));
    }

    [Fact]
    public void AnOutsideWindowIsAskedForItsOverlapAndAnInsideOneIsNot()
    {
        string Written(string mount) => MeasureForm.Paper.Write(FinishedHouse.Data(
            new TestJob().Window("W01").Say("W01", WindowFacts.Mount, mount).Scribe.Log)).Markdown;
        Assert.Contains(WindowFacts.OverlapEachSide.Label, Written("outside"), StringComparison.Ordinal);
        Assert.DoesNotContain(WindowFacts.OverlapEachSide.Label, Written("inside"), StringComparison.Ordinal);
    }
}

using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Papers.CrewPapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.CrewPapers;

public class PullSheetTests
{
    [Fact]
    public void WhatIsCutStandsBesideWhatItsCableMayBe()
    {
        var job = new TestJob().Window("W01");
        job.Legs("W01", ("40 ft", CablePlace.InWall)).Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.TailAtWindow, "48 in")
            .Say("W01", RunFacts.TailAtPanel, "60 in").SayOf("", HouseFacts.CableAllowance, "10").SayOf("16/2", CableTypeFacts.LongestRun, "52 ft");
        // 40 ft + 10 % + 4 ft + 5 ft = 53 ft: no more than the 52 ft of the sheet is cut, for 49 ft are needed without the allowance.
        Assert.Equal(["52 ft\u00A0?", "52 ft\u00A0?"], Row(job)[6..8]);
        Assert.Contains("Less of the allowance is cut where the cable may be no longer: W01 52 ft, not 53 ft\u00A0?.", Text(), StringComparison.Ordinal);
        Assert.Contains("less of the allowance, for the cable may be no longer: W01", Text("parts-list"), StringComparison.Ordinal);
        Assert.Equal("52 ft\u00A0?", PaperList.Find("parts-list")!.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Cable")[0][1]);
        job.SayOf("16/2", CableTypeFacts.LongestRun, "60 ft");
        // A sheet that takes nothing off is in what it permits, and in no length: neither here nor in the sum nor where it is cut.
        Assert.Equal(["53 ft", "60 ft\u00A0?"], Row(job)[6..8]);
        var page = PullSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        Assert.Equal(["1\u00A0?", "53 ft"], page.TableUnder("Cable needed").Single()[4..6]);
        Assert.DoesNotContain("ess of the allowance", Text() + Text("parts-list"), StringComparison.Ordinal);

        string Text(string paper = "pull-sheet") => PaperList.Find(paper)!.Page(FinishedHouse.Data(job.Scribe.Log)).Body!.TextContent;
    }

    [Fact]
    public void ARunThatMayNotBeCutIsInNoCutPlanAndInNoLengthAndIsNamedThere()
    {
        var job = new TestJob().Window("W01");
        job.Legs("W01", ("40 ft", CablePlace.InWall)).Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.TailAtWindow, "48 in")
            .Say("W01", RunFacts.TailAtPanel, "60 in").SayOf("16/2", CableTypeFacts.LongestRun, "48 ft");
        Assert.Equal("Longer than its cable may be: do not cut.\u00A0?", Row(job)[6]);
        var page = PullSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        Assert.Contains("Nothing of it may be cut yet.", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Longer than its cable may be, and not among these: W01.", page.Body.TextContent, StringComparison.Ordinal);
        Assert.Equal(["0\u00A0?", "–"], page.TableUnder("Cable needed").Single()[4..6]);
        Assert.Contains(page.QuerySelectorAll("td").Select(c => c.TextContent), c => c == "longer than its cable may be: not to be cut");
    }

    [Fact]
    public void ACableThatIsNotListedForItsWayIsNotCutEither()
    {
        var job = new TestJob().Window("W01");
        job.Legs("W01", ("40 ft", CablePlace.AirHandlingSpace)).Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.TailAtWindow, "48 in")
            .Say("W01", RunFacts.TailAtPanel, "60 in");
        Assert.Equal("Not listed for where it goes: do not cut.\u00A0?", Row(job)[6]);
        var page = PullSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        Assert.Contains("Not listed for where it goes, and not among these: W01.", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["0\u00A0?", "–"], page.TableUnder("Cable needed").Single()[4..6]);
        Assert.Contains(PaperList.Find("parts-list")!.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Cable"),
            r => r[^1].EndsWith("not listed for where it goes, and not to be cut: W01", StringComparison.Ordinal));
    }

    [Fact]
    public void ABranchIsNoHomeRun()
    {
        var job = new TestJob().Window("W01").Window("W02").Legs("W02", ("4 ft", CablePlace.InWall)).Say("W02", RunFacts.BranchesOff, "W01");
        var rows = PullSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Home runs");
        Assert.StartsWith("a branch off W01; ", rows[1][5], StringComparison.Ordinal);
        var labels = PaperList.Find("labels")!.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("List of labels");
        Assert.DoesNotContain(labels, r => r is ["W02", _, "panel", ..]);
        var record = TestRecord.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        Assert.Equal(["–", "–"], record.TableUnder("Loop tests").Single(r => r[0] == "W02")[2..4]);
    }

    [Fact]
    public void AWindowThatIsLeftOutAndAUnitWithoutACableAreNamedAtItsFoot()
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03").Say("W03", UnitFacts.Power, "battery");
        job.Do(SetFact.Typed(job.House, job.House.FindTag("W02")!.Item, WindowFacts.NotCoveredBecause, "Stained glass."))
            .Do(SetFact.Typed(job.House, job.House.FindTag("W02")!.Item, WindowFacts.Covered, "no"));
        var page = PullSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log));
        Assert.Equal("Left out", page.QuerySelectorAll("h2").Last().TextContent);
        Assert.Equal([("W02", "Stained glass."), ("W03", "power: battery")], page.TableUnder("Left out").Select(r => (r[0], r[2])));
    }

    private static List<string> Row(TestJob job) => PullSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Home runs").Single();
}

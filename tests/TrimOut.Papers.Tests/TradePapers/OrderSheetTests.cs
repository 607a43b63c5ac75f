using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Tests.Labels;
using TrimOut.Papers.TradePapers;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.TradePapers;

public class OrderSheetTests
{
    private const string Sheet = "Order 1, placed on 2026-03-02";
    private const string Since = "Changed since the order";
    private const string Day = "2026-03-02";

    [Fact]
    public void AWidthPutAfterTheFreezeIsOnTheListOfChangesAndTheSheetStaysAsItWasFrozen()
    {
        var job = Frozen();
        Assert.Equal(["Nothing."], Page(job).SaidUnder(Since));
        job.Say("W01", UnitFacts.OrderWidth, "44");
        Assert.Equal(["W01", "Order width", "45\"", "44\"", "Test crew", Day], Changes(job).Single());
        Assert.Equal("45\"", Page(job).TableUnder(Sheet).Single()[2]);
    }

    [Fact]
    public void NobodySaysThatADeductionIsOffWhichTheSheetWasNotReadFor()
    {
        string Said(TestJob job) => Page(job).QuerySelectorAll("tr").Single(r => r.Children.Length > 3 && r.Children[0].TextContent == "Roller")
            .Children[3].TextContent;
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.Mount, "inside").SayOf("Roller", CoveringKindFacts.OrderedInside, "made")
            .SayOf("Roller", CoveringKindFacts.DeductionInside, "");
        Assert.Equal("ask the sheet", Said(job));
        // Whether it is off already is for us, and a stop says so where it is not; the maker makes what is written.
        Assert.Equal("nobody: it is made as it is ordered", Said(job.SayOf("Roller", CoveringKindFacts.DeductionInside, "1/4")));
        Assert.Equal("nobody: it is made as it is ordered", Said(job.SayOf("Roller", CoveringKindFacts.OrderedOutside, "made")
            .Say("W01", WindowFacts.Mount, "outside")));
    }

    [Fact]
    public void ACautionOfAUnitStandsBelowItsOrderAndIsMarkedInItsRow()
    {
        var job = Measured().Window("W02");
        string Markdown() => OrderSheet.Paper.Write(new PaperData(job.Scribe.Log, FinishedHouse.Day, job.Report)).Markdown;
        Assert.DoesNotContain("The order size is", Markdown(), StringComparison.Ordinal);
        job.Say("W01", UnitFacts.OrderWidth, "44 1/2");
        var markdown = Markdown();
        Assert.Contains("| W01\u00A0*", markdown, StringComparison.Ordinal);
        Assert.DoesNotContain("| W02\u00A0*", markdown, StringComparison.Ordinal);
        Assert.Contains("The order size is 44 1/2\" x 60\"; the measures give 45\" x 60\".",
            markdown[markdown.IndexOf("To be cleared up", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Fact]
    public void AUnitOfAStopAtTheHeadIsMarkedInItsRow()
    {
        var job = Measured();
        var markdown = OrderSheet.Paper.Write(new PaperData(job.Scribe.Log, FinishedHouse.Day, job.Report)).Markdown;
        Assert.Contains("**Stop first.**", markdown, StringComparison.Ordinal);
        Assert.Contains("| W01\u00A0*", markdown, StringComparison.Ordinal);
        Assert.Contains("A stop at the head of this paper is about W01.", markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void AValueThatIsPutAgainAsItWasIsNoChange()
    {
        var job = Frozen().Say("W01", UnitFacts.OrderWidth, "44").Say("W01", UnitFacts.OrderWidth, "45");
        Assert.Equal(["Nothing."], Page(job).SaidUnder(Since));
    }

    [Fact]
    public void AMountThatWasChangedIsPrintedAsFrozenAndListed()
    {
        var job = Frozen().Say("W01", WindowFacts.Mount, "outside");
        Assert.Equal(["W01", "Mount", "inside", "outside", "Test crew", Day], Changes(job).Single(c => c[1] == "Mount"));
        Assert.Equal("inside", Page(job).TableUnder(Sheet).Single()[5]);
    }

    [Fact]
    public void ARemovedWindowStaysOnItsSheetAndIsListedAsRemoved()
    {
        var job = Frozen().Window("W02").Say("W01", UnitFacts.Acknowledgement, "A-4711");
        job.Do(RemoveItems.Remove(job.House, job.House.FindTag("W01")!.Item));
        Assert.Equal(["W01", "The unit", "ordered", "removed", "Test crew", Day], Changes(job)[0]);
        Assert.Equal("W01\u00A0*", Page(job).TableUnder(Sheet).First()[0]);
        Assert.Contains("A-4711", Markdown(job), StringComparison.Ordinal);
        Assert.Equal(["W02"], Page(job).TableUnder("Not ordered yet").Select(r => r[0]));
    }

    [Fact]
    public void AWindowThatIsLeftOutAfterTheFreezeIsListedToo()
    {
        var job = Frozen();
        job.Do(SetFact.Typed(job.House, job.House.FindTag("W01")!.Item, WindowFacts.Covered, "no"));
        Assert.Equal("its window is left out", Changes(job).Single()[3]);
        Assert.Contains("| W01\u00A0*", Markdown(job), StringComparison.Ordinal);
        Assert.Contains("Not in the house any more: its window is left out", Markdown(job), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatCameBeforeItWasRemovedIsNoQuestionForTheMaker()
    {
        var job = Frozen().Say("W01", UnitFacts.BoxLabel, "W01");
        Assert.True(job.Unit("W01").BoxIsHere);
        job.Do(RemoveItems.Remove(job.House, job.House.FindTag("W01")!.Item));
        Assert.DoesNotContain("Not in the house any more", Markdown(job), StringComparison.Ordinal);
    }

    private static string Markdown(TestJob job) => OrderSheet.Paper.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown;

    [Fact]
    public void AWindowThatWasAddedAfterTheFreezeIsListedAsOnNoSheet()
    {
        var job = Frozen().Window("W02");
        Assert.Equal(["W02", "The unit", "–", "added, not ordered yet", "Test crew", Day], Changes(job).Single());
    }

    [Fact]
    public void ASecondUnitInAFrozenWindowChangesTheBoxLabelOfTheFirst()
    {
        var job = Frozen();
        job.Do(AddItems.Unit(job.House, job.House.FindTag("W01")!.Id));
        Assert.Equal([["W01", "Box label", "W01", "W01A", "Test crew", Day], ["W01B", "The unit", "–", "added, not ordered yet", "Test crew", Day]],
            Changes(job));
        Assert.Equal("W01", Page(job).TableUnder(Sheet).Single()[0]);
    }

    [Fact]
    public void WhatTheKitSaysIsFrozenToo()
    {
        var job = Frozen().SayOf("Roller", CoveringKindFacts.MotorEnd, "right").SayOf("Roller", CoveringKindFacts.Name, "Roller, large");
        Assert.Equal([["W01", "Kind", "Roller", "Roller, large", "Test crew", Day], ["W01", "Motor end", "left", "right", "Test crew", Day]], Changes(job));
        Assert.Equal(["Roller", "left"], new[] { 1, 6 }.Select(at => Page(job).TableUnder(Sheet).Single()[at]));
    }

    [Fact]
    public void ARemoteMoreThanWhenTheSheetWasFrozenIsListed()
    {
        var job = Frozen().Add(ItemKind.Remote, "Kitchen wall");
        Assert.Equal(["–", "Remote: Handheld", "0", "1", "Test crew", Day], Changes(job).Single());
    }

    [Fact]
    public void UndoingWhatWasDoneBeforeTheFreezeIsListedUnderWhoUndidIt()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.OrderWidth, "45");
        var before = job.Scribe.Log.Changes[^1];
        job.Say("W01", UnitFacts.OrderedOn, Day);
        job.Scribe.By = "Late crew";
        job.Do(new Draft("Undo: the width", [new Edit.Undo(before.Id)]));
        Assert.Equal(["W01", "Order width", "45\"", "–", "Late crew", Day], Changes(job).Single());
        Assert.Equal("45\"", Page(job).TableUnder(Sheet).Single()[2]);
    }

    [Fact]
    public void AnUndoThatWasItselfUndoneIsNoChange()
    {
        var job = Frozen().Say("W01", UnitFacts.OrderWidth, "44");
        Assert.True(job.Scribe.Undo().Ok);
        Assert.Equal(["Nothing."], Page(job).SaidUnder(Since));
        Assert.True(job.Scribe.Redo().Ok);
        Assert.Equal("44\"", Changes(job).Single()[3]);
    }

    [Fact]
    public void AUnitThatWasTakenOffItsSheetIsListed()
    {
        var job = Frozen().Window("W02").Say("W02", UnitFacts.OrderedOn, Day).Say("W01", UnitFacts.OrderedOn, "");
        Assert.Equal(["W01", "The unit", "ordered", "off its sheet", "Test crew", Day], Changes(job).Single());
    }

    [Fact]
    public void OtherUnitsOfLengthAreNoChange() =>
        Assert.Equal(["Nothing."], Page(Frozen().SayOf("", HouseFacts.Units, "millimetres")).SaidUnder(Since));

    [Fact]
    public void OtherUnitsOfLengthAreThoseOfTheWholeSheet()
    {
        var job = Frozen().SayOf("", HouseFacts.Units, "millimetres").Say("W01", UnitFacts.OrderWidth, "1100");
        Assert.Equal(["W01", "Order width", "1143 mm", "1100 mm", "Test crew", Day], Changes(job).Single());
        Assert.Equal("1143 mm", Page(job).TableUnder(Sheet).Single()[2]);
        var rows = CsvTableTests.Read(OrderSheet.Paper.Csv!(FinishedHouse.Data(job.Scribe.Log)));
        Assert.Equal("1143", rows[1][Array.IndexOf(rows[0], "order width, mm")]);
        Assert.Equal("45\"", Page(job.SayOf("", HouseFacts.Units, "inches")).TableUnder(Sheet).Single()[2]);
    }

    [Fact]
    public void AMeasureThatGivesAnotherSizeAfterTheFreezeIsListedWithTheSize()
    {
        var job = Measured().Say("W01", WindowFacts.WidthBottom, "44 1/2").Say("W01", WindowFacts.HeightLeft, "61");
        Assert.Equal(
        [
            ["W01", "Width by the measures", "45\"", "44 1/2\"", "Test crew", Day],
            ["W01", "Height by the measures", "60\"", "61\"", "Test crew", Day],
            ["W01", "Width, bottom", "45\"", "44 1/2\"", "Test crew", Day],
            ["W01", "Height, left", "60\"", "61\"", "Test crew", Day],
        ], Changes(job));
        var rows = CsvTableTests.Read(OrderSheet.Paper.Csv!(FinishedHouse.Data(job.Scribe.Log)));
        Assert.Equal("width by the measures; height by the measures", rows[1][Array.IndexOf(rows[0], "changed since the order")]);
        Assert.Equal("–", Changes(Measured().Say("W01", WindowFacts.WidthTop, ""))[0][3]);
    }

    [Fact]
    public void AMeasureThatGivesTheSameSizeOrTheOneThatWasOrderedIsNoChange()
    {
        Assert.Equal(["Nothing."], Page(Measured().Say("W01", WindowFacts.WidthMiddle, "45 3/4")).SaidUnder(Since));
        var late = new TestJob().Window("W01").Say("W01", UnitFacts.OrderWidth, "45").Say("W01", UnitFacts.OrderHeight, "60")
            .Say("W01", WindowFacts.Mount, "inside").Say("W01", UnitFacts.OrderedOn, Day);
        Assert.Equal(["Nothing."], Page(Sides(late)).SaidUnder(Since));
    }

    [Fact]
    public void WhateverTheSizeIsWorkedOutOfIsListed()
    {
        var kit = Measured(j => j.Say("W01", WindowFacts.WidthTop, "45 1/8")).SayOf("Roller", CoveringKindFacts.RoundTo, "2");
        Assert.Equal([["W01", "Width by the measures", "45\"", "44\"", "Test crew", Day], ["W01", "Order step"]],
            Changes(kit).Select(r => r[1] == "Order step" ? r.Take(2) : r));
        var outside = Measured(j => j.Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.OverlapEachSide, "2"))
            .Say("W01", WindowFacts.OverlapEachSide, "3");
        Assert.Equal([("Width by the measures", "49\"", "51\""), ("Overlap each side", "2\"", "3\"")], Changes(outside).Select(r => (r[1], r[2], r[3])));
    }

    [Fact]
    public void TheTableHasTheSheetAsItWasFrozenAndWhatIsDifferentNow()
    {
        var job = Frozen().Say("W01", UnitFacts.OrderWidth, "44").Window("W02").Say("W02", UnitFacts.OrderedOn, Day);
        job.Do(RemoveItems.Remove(job.House, job.House.FindTag("W02")!.Item)).Window("W03");
        var rows = CsvTableTests.Read(OrderSheet.Paper.Csv!(FinishedHouse.Data(job.Scribe.Log)));
        int Column(string name) => Array.IndexOf(rows[0], name);
        Assert.Equal([["1", "W01", "45", "order width"], ["1", "W02", "", "removed"], ["", "W03", "", ""]],
            rows.Skip(1).Select(r => new[] { r[0], r[1], r[Column("order width, in")], r[Column("changed since the order")] }));
    }

    [Fact]
    public void TheTableHasTheColumnsOfThePaperInItsOrder()
    {
        var job = Frozen();
        var head = CsvTableTests.Read(OrderSheet.Paper.Csv!(FinishedHouse.Data(job.Scribe.Log)))[0];
        var tables = Page(job).QuerySelectorAll("h3").Single(h => h.TextContent == Sheet).ParentElement!.QuerySelectorAll("table")
            .Select(t => t.QuerySelectorAll("thead th").Select(h => h.TextContent.ToLowerInvariant()).ToList())
            .Where(t => t[0] == "box label" && t[^1] != "when")
            .Take(2).ToList();
        Assert.Equal([.. tables[0], .. tables[1].Skip(1)], head[1..^3].Select(h => h.Split(", in")[0]));
    }

    [Fact]
    public void ALaptopWhoseClockIsAYearBehindStillPutItAfterTheFreeze()
    {
        var late = On(Frozen(), "other-laptop", new DateTimeOffset(2025, 1, 5, 8, 0, 0, TimeSpan.Zero), "43");
        Assert.Equal(["W01", "Order width", "45\"", "43\"", "Other crew", "2025-01-05"], Page(late).TableUnder(Since).Single());
    }

    [Fact]
    public void ALaptopWhoseClockIsAYearAheadPutItBeforeTheFreeze()
    {
        var job = new TestJob().Window("W01");
        var ahead = On(job, "other-laptop", new DateTimeOffset(2027, 1, 5, 8, 0, 0, TimeSpan.Zero), "43");
        var unit = ahead.House.Units.Single();
        var frozen = ahead.With(
            new Change(new ChangeId("laptop", 900), ahead.LargestStamp + 1, new DateTimeOffset(2026, 3, 4, 8, 0, 0, TimeSpan.Zero), "Test crew", "frozen",
            [new Edit.Put(unit.Id, UnitFacts.OrderedOn.Name, "2026-03-04", [])]));
        Assert.Equal(["Nothing."], Page(frozen).SaidUnder(Since));
    }

    [Fact]
    public void WhatAnotherLaptopHadDoneBeforeWithoutThatBeingKnownWasNotFrozen()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.OrderWidth, "45").Say("W01", WindowFacts.Mount, "inside");
        var window = job.House.FindTag("W01")!.Item;
        var stamp = job.Scribe.Log.LargestStamp + 1;
        // The other laptop's change stands before the freeze in the agreed order, and comes to this one only afterwards.
        var other = new Change(new ChangeId("another-laptop", 1), stamp, job.Clock.GetUtcNow(), "Other crew", "mount",
            [new Edit.Put(window.Id, WindowFacts.Mount.Name, "outside", [window.Latest(WindowFacts.Mount.Name)!.Id])]);
        job.Say("W01", UnitFacts.Fabric, "Plain weave").Say("W01", UnitFacts.OrderedOn, Day);
        var merged = job.Scribe.Log.With(other);
        Assert.Equal("inside", Page(merged).TableUnder(Sheet).Single()[5]);
        Assert.Equal(["W01", "Mount", "inside", "outside", "Other crew", Day], Page(merged).TableUnder(Since).Single(c => c[1] == "Mount"));
    }

    [Fact]
    public void EachLineSaysWhetherItsWidthIsThatOfTheOpeningOrTheMadeOneAndTheFreezeKeepsIt()
    {
        var job = new TestJob().SayOf("Roller", CoveringKindFacts.OrderedInside, "opening").Window("W01").Say("W01", WindowFacts.Mount, "inside")
            .Say("W01", UnitFacts.OrderWidth, "45").Say("W01", UnitFacts.OrderedOn, Day).SayOf("Roller", CoveringKindFacts.OrderedInside, "made");
        Assert.Equal("opening", Page(job).TableUnder(Sheet).Single()[3]);
        Assert.Equal(["W01", "Width is", "opening", "made", "Test crew", Day], Changes(job).Single());
        var silent = new TestJob().SayOf("Roller", CoveringKindFacts.OrderedInside, "").Window("W01").Say("W01", WindowFacts.Mount, "inside")
            .Say("W01", UnitFacts.OrderWidth, "45").Say("W01", UnitFacts.OrderedOn, Day);
        Assert.Equal("______", Page(silent).TableUnder(Sheet).Single()[3]);
        silent.SayOf("Roller", CoveringKindFacts.OrderedInside, "made");
        Assert.Equal(("made", "Nothing."), (Page(silent).TableUnder(Sheet).Single()[3], Page(silent).SaidUnder(Since).Single()));
    }

    [Fact]
    public void WhoTakesTheDeductionOffIsSaidWithHowMuchWeReckon()
    {
        var job = new TestJob().SayOf("Roller", CoveringKindFacts.OrderedInside, "opening").SayOf("Roller", CoveringKindFacts.DeductionInside, "1/2")
            .SayOf("Roller", CoveringKindFacts.MotorVolts, "12").Window("W01").Say("W01", WindowFacts.Mount, "inside");
        List<string> Terms() => Page(job).QuerySelectorAll("table").Select(t => t.QuerySelectorAll("tbody tr > *").Select(c => c.TextContent).ToList())
            .Single(t => t[0] == "Roller" && t[1] == "inside");
        Assert.Equal(["Roller", "inside", "opening", "the maker: 1/2\" over all", "12 V", "______"], Terms());
        job.SayOf("Roller", CoveringKindFacts.OrderedInside, "made");
        Assert.Equal("nobody: it is made as it is ordered", Terms()[3]);
        job.SayOf("Roller", CoveringKindFacts.OrderedInside, "opening").SayOf("Roller", CoveringKindFacts.DeductionInside, "0");
        Assert.Equal("nobody: nothing comes off", Terms()[3]);
    }

    [Fact]
    public void TheSheetSaysHowLeftAndRightAreMeantHowManyItAsksForAndByWhichDay()
    {
        var job = Frozen().Window("W02", kind: "Cellular").Say("W02", UnitFacts.OrderedOn, Day).Window("W03");
        Assert.Contains("Units: 2 (Roller: 1, Cellular: 1).", Page(job).SaidUnder(Sheet));
        Assert.Contains("Units: 1 (Roller: 1).", Page(job).SaidUnder("Not ordered yet"));
        Assert.Contains(Page(job).QuerySelectorAll("li").Select(l => l.TextContent),
            l => l.StartsWith("Left and right are as seen from inside the room, facing the window", StringComparison.Ordinal));
        string NeededBy() => Page(job).TableUnder("For whoever makes it").Single(r => r[0] == "Needed by")[1];
        Assert.Equal("______", NeededBy());
        job.Do(AddItems.Visit(job.House, "Hang upstairs"));
        job.Do(SetFact.Typed(job.House, job.House.Visits.Single().Item, VisitFacts.On, "2026-05-04"))
            .Do(SetFact.Typed(job.House, job.House.Visits.Single().Item, VisitFacts.Phase, "hang"));
        Assert.Equal("2026-05-04", NeededBy());
    }

    // 45 in measured: a width that was taken as it was offered rests on the step and on what the width is, and one typed otherwise on neither.
    [Fact]
    public void ASizeThatWasTakenAsItWasOfferedHasTheMarkOfTheOffer()
    {
        var job = Sides(new TestJob().Window("W01").Say("W01", WindowFacts.Mount, "inside")).SayOf("Roller", CoveringKindFacts.RoundTo, "1/8");
        var offered = job.House.Units[0].WorkedOutWidth!.Value.Show(job.House.DisplayUnits);
        job.Say("W01", UnitFacts.OrderWidth, offered);
        Assert.Equal($"{offered}\u00A0?", Marked(job)[2]);
        Assert.Contains("Order step", Csv(job), StringComparison.Ordinal);
        job.Do(KitCheck.All(job.House, job.House.ItemsOf(ItemKind.CoveringKind).Single(k => job.House.NameOf(k) == "Roller")));
        Assert.Equal(offered, Marked(job)[2]);
        job.SayOf("Roller", CoveringKindFacts.RoundTo, "1/4").Say("W01", UnitFacts.OrderWidth, "44");
        Assert.Equal("44\"", Marked(job)[2]);
        Assert.DoesNotContain("Order step", Csv(job), StringComparison.Ordinal);
    }

    [Fact]
    public void TheMotorEndOfAKindThatIsMadeEitherWayHasTheMarkOfThatKind()
    {
        var job = new TestJob().Window("W01").SayOf("Roller", CoveringKindFacts.MotorEnd, "either").Say("W01", UnitFacts.LeadSide, "left");
        Assert.Equal("left\u00A0?", Marked(job)[6]);
        Assert.Contains("Motor end", Csv(job), StringComparison.Ordinal);
    }

    private static List<string> Marked(TestJob job) => OrderSheet.Paper.Page(FinishedHouse.Data(job.Scribe.Log)).TableUnder("Not ordered yet").First();

    private static string Csv(TestJob job) =>
        string.Join('\n', OrderSheet.Paper.Table!(FinishedHouse.Data(job.Scribe.Log)).Rows.Select(r => r[^2].Text));

    private static TestJob Frozen() =>
        new TestJob().Window("W01").Say("W01", UnitFacts.OrderWidth, "45").Say("W01", WindowFacts.Mount, "inside").Say("W01", UnitFacts.OrderedOn, Day);

    /// <summary>Measured 45 x 60, ordered so, and frozen.</summary>
    private static TestJob Measured(Func<TestJob, TestJob>? then = null)
    {
        var job = Sides(new TestJob().Window("W01").Say("W01", WindowFacts.Mount, "inside"));
        return (then?.Invoke(job) ?? job).Say("W01", UnitFacts.OrderWidth, "45").Say("W01", UnitFacts.OrderHeight, "60").Say("W01", UnitFacts.OrderedOn, Day);
    }

    private static TestJob Sides(TestJob job)
    {
        foreach (var fact in new[] { WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom })
            job.Say("W01", fact, "45");
        foreach (var fact in new[] { WindowFacts.HeightLeft, WindowFacts.HeightMiddle, WindowFacts.HeightRight })
            job.Say("W01", fact, "60");
        return job;
    }

    /// <summary>The history with one more change of another laptop, which had all that came before.</summary>
    private static HouseLog On(TestJob job, string device, DateTimeOffset clock, string inches)
    {
        var unit = job.Unit("W01").Item;
        var stored = UnitFacts.OrderWidth.ReadTyped(inches, job.House).Value;
        var over = unit.Latest(UnitFacts.OrderWidth.Name) is { } head ? new[] { head.Id } : [];
        return job.Scribe.Log.With(
            new Change(new ChangeId(device, 1), job.Scribe.Log.LargestStamp + 1, clock, "Other crew", "width",
                [new Edit.Put(unit.Id, UnitFacts.OrderWidth.Name, stored, [.. over])]));
    }

    private static List<List<string>> Changes(TestJob job) => Page(job).TableUnder(Since);

    private static AngleSharp.Html.Dom.IHtmlDocument Page(TestJob job) => Page(job.Scribe.Log);

    // Without the marks of what nobody checked, which are looked at for all papers at once.
    private static AngleSharp.Html.Dom.IHtmlDocument Page(HouseLog log) => new AngleSharp.Html.Parser.HtmlParser()
        .ParseDocument(OrderSheet.Paper.Write(FinishedHouse.Data(log)).ToHtml().Replace("\u00A0?", "", StringComparison.Ordinal));

    [Fact]
    public void AValueThatTwoLaptopsPutDifferentlyIsMarkedAndBothAreNamedBeforeItIsMade()
    {
        var first = Measured();
        var both = first.Scribe.Log.Changes;
        var here = new TestJob(store: new MemoryStore("here", both)).Say("W01", UnitFacts.OrderWidth, "45");
        var there = new TestJob(store: new MemoryStore("there", both)).Say("W01", UnitFacts.OrderWidth, "46");
        var job = new TestJob(store: new MemoryStore("here", [.. here.Scribe.Log.Changes.Union(there.Scribe.Log.Changes)]));
        var markdown = OrderSheet.Paper.Write(new PaperData(job.Scribe.Log, FinishedHouse.Day, job.Report)).Markdown;
        Assert.Contains("| W01\u00A0*", markdown, StringComparison.Ordinal);
        Assert.Matches("4[56]\"\u00A0\u2260", markdown);
        Assert.Matches("(?s)To be cleared up:.*45\".*46\"|To be cleared up:.*46\".*45\"", markdown);
        Assert.Contains("two laptops have different ones", markdown, StringComparison.Ordinal);
        var hang = Papers.CrewPapers.HangSheet.Paper.Write(new PaperData(job.Scribe.Log, FinishedHouse.Day, job.Report)).Markdown;
        Assert.Matches("4[56]\"\u00A0\u2260", hang);
    }
}

using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

public class WalkTests
{
    [Fact]
    public void OneStepForFortyUnitsTakesFortyKeys()
    {
        var job = new TestJob();
        for (var n = 1; n <= 40; n++)
            job.Do(AddItems.Window(job.House, $"W{n:00}", null)).Pulled($"W{n:00}");
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe);
        user.Press("2", "]", "]");
        for (var n = 1; n <= 40; n++)
            user.Press("x");
        var step = StepList.Find("cable-found")!;
        Assert.All(user.House.Units, u => Assert.NotNull(u.MarkOf(step)));
    }

    /// <summary>Steps stand one above the other: the arrow that points at a step goes there, and Left and Right go through units, as on a sheet.</summary>
    [Fact]
    public void UpGoesToTheStepBeforeFirstAndOnlyThenToTheUnitBefore()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Window("W02").Scribe);
        user.Press("2", "]");
        var steps = user.Shell.Context.Steps.Open(Phase.RoughIn, user.House.Units[0]).Select(s => s.Id).ToList();
        Assert.Equal(("W01", steps[0]), At());
        user.Press("down", "right");
        Assert.Equal(("W02", steps[1]), At());
        user.Press("up");
        Assert.Equal(("W02", steps[0]), At());
        user.Press("up");
        Assert.Equal(("W01", steps[^1]), At());
        user.Press("down");
        Assert.Equal(("W02", steps[0]), At());
        user.Press("left");
        Assert.Equal(("W01", steps[0]), At());
        user.Press("up");
        Assert.Equal(("W01", steps[0]), At());

        (string Unit, string Step) At() => user.Shell.Screen is Walk.WalkScreen walk
            ? (walk.Subject(user.Shell.Context)!.Name, walk.Step(user.Shell.Context)!.Id) : default;
    }

    // Ordered by the opening, 36 in; the maker takes 5/16 in off: the right unit is 35 11/16 in wide, and its label reads 36 in.
    [Theory]
    [InlineData("36", true)]
    [InlineData("35 11/16", false)]
    public void WhatTheSizeWasReadFromIsAskedOnlyWhereItMatters(string read, bool asked)
    {
        var job = new TestJob().SayOf("Roller", CoveringKindFacts.OrderedInside, "opening").SayOf("Roller", CoveringKindFacts.DeductionInside, "5/16")
            .Window("W01").Say("W01", WindowFacts.Mount, "inside").Say("W01", UnitFacts.OrderWidth, "36").Say("W01", UnitFacts.OrderHeight, "60");
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe);
        user.Press("2");
        while (((Walk.WalkScreen)user.Shell.Screen).Phase != Phase.Receive)
            user.Press("]");
        user.DoesNotSee("Size read from").Press("space").Type("W01").Type(read).Type("60");
        if (asked)
            user.Sees("Label: as printed on its box.").Type("unit").Type("yes").Sees("the unit itself is 36\" wide");
        else
            user.DoesNotSee("Size read from").Sees("Finish as ordered");
        Assert.Equal(asked ? SizeReadFrom.Unit : null, user.House.Units[0].Item.Get(UnitFacts.SizeReadFrom));
    }

    [Fact]
    public void UpAndDownBesideWhatIsTypedForTheFilterChooseWhoWalks()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Window("W02").Scribe);
        user.Press("2", "]", "/").Write("w0").Press("down", "enter");
        Assert.Equal("W02", ((Walk.WalkScreen)user.Shell.Screen).Subject(user.Shell.Context)!.Name);
    }

    [Fact]
    public void EvidenceIsAskedForBeforeAStepIsMarkedAndJudgedOnTheSpot()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        user.Press("2", "space").Type("SW").Type("floor").Type("inside").Type("40 ft").Sees("is too long");
        user.Type("36").Type("60").Type("no").Sees("Saved: W01: Opening recorded");
        Assert.Equal("36\"", user.House.Windows[0].Show(WindowFacts.RoughWidth));
    }

    /// <summary>The findings beside an open line are judged as if its value were saved now.</summary>
    [Fact]
    public void ABoxLabelThatIsBeingTypedIsNotReadBeforeItsOrder()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.OrderedOn, "2026-03-02");
        using var user = new TerminalUser(new TestDesk(job.Clock), job.Scribe);
        user.Press("2", "]", "]", "]", "]", "]", "space").Write("W01").Sees("Box label").DoesNotSee("0001-01-01").DoesNotSee("its box was read on");
    }

    [Fact]
    public void EvidenceThatIsChangedOnAMarkedStepIsNotSaidToWaitForSpace()
    {
        var job = new TestJob().Window("W01");
        job.Do(SetFact.Typed(job.House, job.House.Windows[0].Item, WindowFacts.InTheWay, "none")).Mark("W01", "in-the-way-noted");
        using var user = new TerminalUser(new TestDesk(job.Clock), job.Scribe);
        user.Press("2", "]", "]", "]", "down", "down", "enter").Type("a handle").Sees("which was marked done before").DoesNotSee("Space marks it done");
        Assert.Equal("a handle", user.House.Windows[0].Show(WindowFacts.InTheWay));
    }

    [Fact]
    public void AnOfferThatWaitsForAnotherDetailSaysWhereThatIsTyped()
    {
        var job = new TestJob().Window("W01").Say("W01", WindowFacts.Mount, "outside").Say("W01", WindowFacts.WidthTop, "36")
            .Say("W01", WindowFacts.WidthMiddle, "36").Say("W01", WindowFacts.WidthBottom, "36");
        using var user = new TerminalUser(new TestDesk(job.Clock), job.Scribe, 160, 40);
        user.Press("2", "]", "]", "]", "]", "down", "space").Sees("Overlap each side of W01 is not there yet")
            .Sees("d shows all details, / finds Overlap each side");
        user.Press("esc", "d", "/").Write("Overlap").Sees("Overlap each side");
    }

    [Fact]
    public void AStepThatIsNotNeededAsksWhy()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        user.Press("2", "]", "]", "-").Type("").Sees("Say why it is not needed");
        user.Type("battery unit").Sees("not needed: battery unit");
    }

    [Fact]
    public void TheHoldTimerCountsTheKitsSeconds()
    {
        var clock = new FakeTimeProvider();
        using var user = new TerminalUser(new TestDesk(clock), new TestJob().Window("W01").Scribe);
        user.Press("2", "]", "]", "]", "]", "]", "]", "]", "]", "h").Sees("seconds: keep holding");
        clock.Advance(TimeSpan.FromSeconds(10));
        user.Shell.Tick();
        Assert.Contains("Let go. Did the cue come?", user.Shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void TheHoldTimerCountsFromTheKeyAndNotFromWhenTheScreenWasDrawn()
    {
        var clock = new FakeTimeProvider();
        using var user = new TerminalUser(new TestDesk(clock), new TestJob().Window("W01").Scribe);
        user.Press("2", "]", "]", "]", "]", "]", "]", "]", "]");
        clock.Advance(TimeSpan.FromMinutes(1));
        user.Press("h").Sees("seconds: keep holding");
        clock.Advance(TimeSpan.FromSeconds(1));
        user.Shell.Tick();
        Assert.DoesNotContain("Let go", user.Shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void AReadingThatCanNotBeIsToldWhileTheMeterIsStillOnTheCable()
    {
        var job = new TestJob().Window("W01").Say("W01", RunFacts.Cable, "16/2").Legs("W01", ("80 ft", CablePlace.InWall))
            .Say("W01", RunFacts.TailAtWindow, "36").Say("W01", RunFacts.TailAtPanel, "36");
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe);
        user.Press("2", "]");
        while (((Walk.WalkScreen)user.Shell.Screen).StepId != "tested-first")
            user.Press("down");
        user.Press("x").Type("12 ohm").Sees("CAUTION W01: The loop reads 12 ohm");
    }

    [Fact]
    public void ARefusedSaveKeepsTheTextThatWasTyped()
    {
        var store = new MemoryStore();
        var job = new TestJob(store: store).Window("W01");
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), job.Scribe);
        store.FailWith = "The disk is full. Nothing was saved.";
        user.Press("enter", "enter").Type("W77").Sees("The disk is full").Sees("W77");
        Assert.NotNull(user.Shell.Typing);
        store.FailWith = null;
        user.Press("enter");
        Assert.Equal("W77", user.House.Windows[0].Tag);
    }

    [Fact]
    public void WhatAFullDiskRefusedIsWrittenElsewhereWithoutTypingItAgain()
    {
        var store = new MemoryStore();
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob(store: store).Window("W01").Scribe);
        store.FailWith = "The disk is full. Nothing was saved.";
        user.Press("enter", "enter").Type("W77").Sees("The disk is full").Sees("NOT SAVED");
        user.Press("f2").Sees("Write the whole house to: copy-1.trimout").Type("full/x").Sees("That disk is full too.").Press("esc").Sees("W77");
        user.Press("f2", "enter").Sees("W77").Sees("Written to memory.").Sees("Enter saves what").Press("enter");
        Assert.Equal("W77", user.House.Windows[0].Tag);
        user.DoesNotSee("NOT SAVED");
        Assert.Equal("elsewhere", user.Shell.Open!.Store.Device);
    }

    [Theory]
    [InlineData("q", "Leave TrimOut? NOT SAVED. F2 writes all elsewhere, q or y leaves,")]
    [InlineData("esc", "Close Test house and go to the list of houses? NOT SAVED.")]
    public void LeavingWhatIsNotSavedSaysSoAndF2WritesItElsewhere(string leave, string question)
    {
        var store = new MemoryStore();
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob(store: store).Window("W01").Scribe);
        user.Press(leave).Sees("All is saved.").Press("down");
        store.NotHeldBecause = "The house file was removed.";
        user.Press(leave).Sees(question).Sees("The house file was").DoesNotSee("All is saved");
        user.Press("f2").Sees("Write the whole house to").Press("enter").Sees("Written to memory.");
        Assert.Equal("elsewhere", user.Shell.Open!.Store.Device);
        user.Press(leave).Sees("All is saved.");
    }

    [Fact]
    public void APasteIsCutToWhatAFieldTakesAndThatIsSaid()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        user.Press("enter", "enter");
        user.Shell.TextChanged(new string('n', 27_000));
        user.Press(ShellState.RedrawKey);
        user.Sees("A field takes 4000 characters. The 23000 after them are left out.");
        Assert.Equal(ShellState.MostTyped, user.Shell.Typing!.Text.Length);
    }

    [Fact]
    public void LeavingAfterASaveThatFailedSaysSo()
    {
        var store = new MemoryStore();
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob(store: store).Window("W01").Scribe);
        store.FailWith = "The disk is full. Nothing was saved.";
        user.Press("enter", "enter").Type("W77").Press("esc").Press("q").Sees("Leave TrimOut? NOT SAVED.").Sees("The disk is full.");
    }

    [Fact]
    public void WhatOneLaptopRemovedWhileTheOtherWentOnIsBroughtBackFromThePunchList()
    {
        var first = new TestJob().Window("W01").Window("W02");
        var both = first.Scribe.Log.Changes;
        var here = new TestJob(store: new MemoryStore("here", both));
        here.Do(Core.Decisions.RemoveItems.Remove(here.House, here.House.FindTag("W01")!.Item).Value);
        var there = new TestJob(store: new MemoryStore("there", both)).Say("W01", WindowFacts.RoughWidth, "38");
        var merged = new MemoryStore("here", [.. here.Scribe.Log.Changes.Union(there.Scribe.Log.Changes)]);
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob(store: merged).Scribe);
        user.Press("6").Sees("removed it on").Press("a").Sees("This is not waived but decided: Enter asks.");
        user.Press("enter").Sees("bring it back").Press("down").Sees("leave it removed").Press("down", "enter").Sees("Saved: Brought back W01");
        Assert.Equal("38\"", user.House.FindTag("W01")!.Show(WindowFacts.RoughWidth));
        user.DoesNotSee("removed it on");
    }

    [Fact]
    public void TwoLaptopsValuesAreWalkedThroughAndTakingOneSettlesIt()
    {
        var first = new TestJob().Window("W01");
        var both = first.Scribe.Log.Changes;
        var here = new TestJob(store: new MemoryStore("here", both)).Say("W01", WindowFacts.RoughWidth, "36");
        var there = new TestJob(store: new MemoryStore("there", both)).Say("W01", WindowFacts.RoughWidth, "38");
        var merged = new MemoryStore("here", [.. here.Scribe.Log.Changes.Union(there.Scribe.Log.Changes)]);
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob(store: merged).Scribe);
        user.Press("6").Sees("36\"").Sees("38\"").Press("enter", "enter").Sees("38\" by Test crew, 2026-03-02").Sees("Enter keeps it.").Press("down")
            .Sees("36\" by Test crew").Press("down").Press("down", "enter");
        Assert.Single(user.House.Windows[0].Item.Heads(WindowFacts.RoughWidth.Name));
        Assert.DoesNotContain(user.Shell.Context.Report.Findings, f => f.Check.Id == "values-disagree");
    }
}

using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A step that makes no sense before another asks; a mark says which step it is before it is made.</summary>
public class OrderOfWorkTests
{
    private static TerminalUser At(TestJob job, int width = 80, int height = 24) => new(new TestDesk(new FakeTimeProvider()), job.Scribe, width, height);

    private static StepMark? MarkOf(TerminalUser user, string tag, string step) => user.House.Units.Single(u => u.Tag == tag).MarkOf(StepList.Find(step)!);

    [Theory]
    [InlineData(80, 24)]
    [InlineData(140, 40)]
    public void HungBeforeReceivedAsksAndNamesWhatComesFirst(int width, int height)
    {
        using var user = At(new TestJob().Window("W01").Mark("W01", "brackets-fixed").Mark("W01", "centre-support-clear").Mark("W01", "looked-over")
            .Say("W01", UnitFacts.OutOfLevel, "0"),
            width, height);
        user.Press("2", "]", "]", "]", "]", "]", "]", "down", "space").Sees("\"Box matched\" (Receive) is not done yet.")
            .Sees("STOP \"Checked for damage\" is marked done;")
            .Sees("W01, Clicked in: ").Sees("Why all the same:");
        Assert.Null(MarkOf(user, "W01", "clicked-in"));
        user.Type("").Sees("Say why, or leave with Esc").Type("box was opened by the builder").Sees("Saved: W01: Clicked in, although");
        Assert.Equal("box was opened by the builder", MarkOf(user, "W01", "clicked-in")!.Although);
        user.Press("up").Sees("(although: box was").Press("8").Sees("Clicked in, although");
    }

    [Fact]
    public void WhichPhaseSpaceMarksInIsSaidWhenAnotherIsShown()
    {
        using var user = At(new TestJob().Window("W01"));
        user.Press("right").Sees("Walk-through is shown: Space marks in it.").Press("left").Sees("All phases are shown");
    }

    [Fact]
    public void EscMarksNothing()
    {
        using var user = At(new TestJob().Window("W01"));
        user.Press("2", "]", "]", "x").Sees("\"Cable pulled, tails left\" (Rough-in)").Press("esc");
        Assert.Null(MarkOf(user, "W01", "cable-found"));
    }

    /// <summary>The day of an order says that a size went out: whoever marks it is asked for the size first.</summary>
    [Fact]
    public void AnOrderIsPlacedWithItsSizeOnly()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.OrderWidth, "36");
        using var user = At(job);
        user.Press("2", "]", "]", "]", "]");
        while (((Walk.WalkScreen)user.Shell.Screen).StepId != "sheet-frozen")
            user.Press("down");
        user.Press("space").Sees("W01: Order height").Type("60").Sees("The day the order was placed.").Type("2026-03-02");
        Assert.Equal(("60\"", "2026-03-02"), (user.House.Units[0].Show(UnitFacts.OrderHeight), user.House.Units[0].Show(UnitFacts.OrderedOn)));
    }

    [Fact]
    public void TheDayOfAnOrderWithoutASizeAsksOnceMoreAndIsAStopThen()
    {
        using var user = At(new TestJob().Window("W01").Say("W01", UnitFacts.OrderWidth, "36"), 140, 40);
        user.Press("enter", "/").Write("Ordered on").Press("enter", "enter").Type("2026-03-02")
            .Sees("W01 has no order height yet, and an order goes out with both.").Sees("Enter once more takes it");
        Assert.Equal("", user.House.Units[0].Show(UnitFacts.OrderedOn));
        user.Press("enter").Sees("It is ordered, and this is blank: order height.");
    }

    [Fact]
    public void ManyOrdersOneOfThemWithoutAHeightAskForAReason()
    {
        var job = new TestJob();
        foreach (var tag in (string[])["W01", "W02"])
        {
            job.Window(tag).Say(tag, UnitFacts.OrderWidth, "36").Say(tag, UnitFacts.OrderHeight, "60").Say(tag, UnitFacts.OrderedOn, "2026-03-02");
            foreach (var step in (string[])["finish-chosen", "size-worked-out"])
                job.Do(MarkStep.NotNeeded(job.Unit(tag), StepList.Find(step)!, "the owner orders these"));
        }
        job.Say("W02", UnitFacts.OrderHeight, "");
        using var user = At(job, 140, 40);
        user.Press("right", "right", "right", "right", "right", "V", "space").Sees("W02: STOP It").Sees("is ordered, and this is blank: order height.")
            .Sees("Why all the same:");
        Assert.Null(MarkOf(user, "W02", "sheet-frozen"));
    }

    [Fact]
    public void AReasonIsOfferedAgainForTheNextUnit()
    {
        using var user = At(new TestJob().Window("W01").Window("W02"));
        user.Press("2", "]", "]", "x").Type("pulled by the builder").Press("x").Sees("Why all the same (Up: as before):").Press("up", "enter");
        Assert.Equal("pulled by the builder", MarkOf(user, "W02", "cable-found")!.Although);
    }

    [Fact]
    public void PairingWithAPolarityStopOpenAsksOnce()
    {
        var job = new TestJob().Window("W01").Mark("W01", "volts-read").Add(Core.Houses.ItemKind.Hub, "Hub").Say("W01", UnitFacts.Hub, "Hub")
            .Say("W01", UnitFacts.HubName, "Kitchen").Say("W01", RunFacts.Polarity, "swapped");
        using var user = At(job);
        user.Press("2", "]", "]", "]", "]", "]", "]", "]", "]", "space").Sees("STOP").Sees("Plus and minus are changed over").Type("moved by hand only");
        Assert.Equal("moved by hand only", MarkOf(user, "W01", "hub-paired")!.Although);
    }

    [Fact]
    public void ManyAtUnlikeStepsSayWhichStepOnHowManyBeforeTheKeyAndAskWithIt()
    {
        using var user = At(new TestJob().Window("W01").Window("W02").Mark("W01", "opening-seen").Window("W03").Mark("W03", "opening-seen"), 140, 40);
        user.Press("V").Sees("3 units picked. Space marks").Sees("Opening recorded (Walk-through) on 1").Press("space")
            .Sees("Kind, lead side and power decided (Walk-through) on 2").Press("space").Sees("Nothing was done.");
        Assert.Null(user.Shell.Typing);
    }

    [Fact]
    public void ManyMarksAgainstWhichSomethingSpeaksTakeOneReason()
    {
        using var user = At(new TestJob().Window("W01").Window("W02").Pulled("W02").Window("W03"), 140, 40);
        user.Press("right", "right", "right", "V", "space").Sees("2 units: W01, W03:").Sees("Why all the same:").Type("the builder pulled them");
        Assert.Equal("the builder pulled them", MarkOf(user, "W03", "cable-found")!.Although);
        Assert.Equal(StepMark.Done, MarkOf(user, "W02", "cable-found"));
        user.Press("8").Sees("W03: Cable found again: blank ► done although: the builder");
    }

    /// <summary>Where something else speaks against many units, none of them is left out of the question.</summary>
    [Fact]
    public void TheQuestionForManyNamesEveryUnitThatSomethingSpeaksAgainst()
    {
        var job = new TestJob();
        for (var n = 1; n <= 8; n++)
        {
            job.Window($"W0{n}");
            if (n > 2)
                job.Say($"W0{n}", UnitFacts.LeadSide, "left").Say($"W0{n}", UnitFacts.EntrySide, "right").Say($"W0{n}", UnitFacts.EntryFromJamb, $"{n}");
        }
        using var user = At(job);
        user.Press("right", "right", "right", "V", "space").Sees("8 units: ").Sees("Why all the same:");
        Assert.All(user.House.Units, u => Assert.Contains(u.Tag, user.Shell.Typing!.Entry.Warning, StringComparison.Ordinal));
        user.DoesNotSee("…");
    }

    [Fact]
    public void AMarkDoesNotRunAheadToALaterPhaseUnasked()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.Power, "battery").Mark("W01", "opening-seen").Mark("W01", "covering-planned")
            .Mark("W01", "measured");
        using var user = At(job);
        user.Press("right", "space").Sees("Every step of Walk-through is done at W01.").Press("left");
        job = new TestJob().Window("W01").Say("W01", UnitFacts.Power, "battery").Mark("W01", "opening-seen").Mark("W01", "covering-planned");
        using var other = At(job);
        other.Press("space").Sees("W01: Walk-through is done. y marks \"Opening measured\" of Measure").Press("space").Sees("Nothing was done.");
        other.Press("space", "y").Sees("Width, top");
    }

    [Fact]
    public void SpaceMarksInThePhaseThatIsShown()
    {
        using var user = At(new TestJob().Window("W01").Pulled("W01"));
        user.Press("right", "right", "right", "space");
        Assert.NotNull(MarkOf(user, "W01", "cable-found"));
        Assert.Null(MarkOf(user, "W01", "opening-seen"));
    }
}

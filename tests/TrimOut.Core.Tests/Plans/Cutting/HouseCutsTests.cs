using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Cutting;

public class HouseCutsTests
{
    [Fact]
    public void ARunIsCutToItsLegsAllowanceAndTailsFromTheBoxesOnHand()
    {
        var job = Job("W01", "W02").Box("A", "300 ft").Box("B", "80 ft");
        var cuts = HouseCuts.Orders(job.House, Length.Zero).Single();
        // 60 ft of legs and 10 %, 3 ft at the window, 6 ft at the panel.
        Assert.Equal([("W01", 75m), ("W02", 75m)], cuts.Order.Pieces.Select(p => (p.Id, p.Length.Feet)));
        var plan = CutPlanner.Solve(cuts.Order).Value;
        Assert.Equal(("A", 1, true), (plan.Boxes.Single().Box.Id, plan.Opened.Found, plan.Proven));
        Assert.Empty(cuts.LeftOut);
    }

    [Fact]
    public void RunsPulledTogetherAreCutFromTwoBoxes()
    {
        var job = Job("W01", "W02").Box("A", "300 ft").Box("B", "80 ft").Say("W01", RunFacts.Bundle, "east wall").Say("W02", RunFacts.Bundle, "east wall");
        Assert.Equal(2, CutPlanner.Solve(HouseCuts.Orders(job.House, Length.Zero).Single().Order).Value.Opened.Found);
    }

    [Fact]
    public void WithoutBoxesOnHandFullOnesAreToBuy()
    {
        var plan = CutPlanner.Solve(HouseCuts.Orders(Job("W01", "W02").House, Length.Zero).Single().Order).Value;
        Assert.Equal((1, Length.FromFeet(500)), (plan.ToBuy.Found, plan.Boxes.Single().Box.Length));
    }

    [Fact]
    public void WhatIsLeftOutIsSaidWithTheReason()
    {
        var job = Job("W01", "W02", "W03").Box("A", "0 ft").Add(ItemKind.Box, "B").SayOf("B", BoxFacts.Cable, "16/2").Mark("W02", "cable-pulled")
            .Window("W04").Say("W04", RunFacts.Cable, "16/2");
        var cuts = HouseCuts.Orders(job.House, Length.Zero).Single();
        Assert.Equal(["W01", "W03"], cuts.Order.Pieces.Select(p => p.Id));
        Assert.Equal(
            ["W02: pulled already", "W04: its length is not known: legs, tails, allowance", "B: how much is left in it is not known", "A: it is empty"],
            cuts.LeftOut.Select(l => $"{l.Subject.Name}: {l.Why}"));
    }

    /// <summary>60 ft of legs, 3 ft and 6 ft of tails are 69 ft: the sheet's longest run, and an inch more than it.</summary>
    [Theory]
    [InlineData("69 ft", true)]
    [InlineData("68'-11\"", false)]
    public void ARunThatIsLongerThanItsCableMayBeIsHeldBackAndNamed(string longest, bool isCut)
    {
        var job = Job("W01", "W02").Say("W02", RunFacts.TailAtPanel, "24\"").SayOf("16/2", CableTypeFacts.LongestRun, longest);
        var cuts = HouseCuts.Orders(job.House, Length.Zero).Single();
        Assert.Equal(isCut ? ["W01", "W02"] : (string[])["W02"], cuts.Order.Pieces.Select(p => p.Id));
        Assert.Equal(isCut ? [] : (string[])["W01"], cuts.Held.Select(r => r.Name));
        Assert.Empty(cuts.WithoutLength);
        // What was pulled was cut already, however long it is.
        Assert.Empty(HouseCuts.Orders(job.Mark("W01", "cable-pulled").House, Length.Zero).Single().Held);
    }

    /// <summary>Whoever cut it would hang a cable in the air that the inspector has taken out again; who asked the authority and waived it may.</summary>
    [Fact]
    public void ARunWhoseCableIsNotListedForItsWayIsHeldBackUntilThatIsWaived()
    {
        var job = Job("W01", "W02").Legs("W02", ("9 ft", CablePlace.AirHandlingSpace));
        var cuts = HouseCuts.Orders(job.House, Length.Zero).Single();
        Assert.Equal(["W01"], cuts.Order.Pieces.Select(p => p.Id));
        Assert.Equal(["W02: not listed for where it goes: not to be cut"], cuts.LeftOut.Select(l => $"{l.Subject.Name}: {l.Why}"));
        Assert.Equal([HeldBack.NotListed], cuts.Held.Select(r => HouseCuts.WhyHeld(r)!.Value));
        var found = CheckReport.Of(job.House).Findings.Single(f => f.Check.Id == "cable-not-listed");
        job.Do(PunchList.Waive(found, job.House, "asked the authority", "RE"));
        Assert.Equal(["W01", "W02"], HouseCuts.Orders(job.House, Length.Zero).Single().Order.Pieces.Select(p => p.Id));
    }

    /// <summary>36 in wide: 18 in of tail are half, and what is shorter is not what another cable is cut for.</summary>
    [Theory]
    [InlineData("18\"", 18)]
    [InlineData("17\"", 36)]
    [InlineData("40\"", 40)]
    public void ATailUnderHalfOfTheWidthIsNotWhatTheNextCableIsCutFor(string left, int tail)
    {
        var run = Job("W01").Say("W01", WindowFacts.RoughWidth, "36\"").Say("W01", RunFacts.TailAtWindow, left).House.Runs.Single();
        Assert.Equal(Length.FromFeet(60 * 1.1m + 6) + Length.FromInches(tail), run.Needed);
    }

    [Fact]
    public void EachCableIsCutByItself()
    {
        var job = Job("W01", "W02").Say("W02", RunFacts.Cable, "18/2");
        Assert.Equal([("16/2", "W01"), ("18/2", "W02")], HouseCuts.Orders(job.House, Length.Zero).Select(c => (c.Cable.Name, c.Order.Pieces.Single().Id)));
    }

    private static TestJob Job(params string[] tags) => tags.Aggregate(new TestJob(), (job, tag) => job.Window(tag)
        .Say(tag, RunFacts.Cable, "16/2")
        .Legs(tag, ("60 ft", CablePlace.InWall))
        .Say(tag, RunFacts.TailAtWindow, "36\"")
        .Say(tag, RunFacts.TailAtPanel, "72\""));
}

internal static class BoxesOfAJob
{
    /// <summary>Adds a box of 16/2 with so much left in it.</summary>
    public static TestJob Box(this TestJob job, string name, string left) =>
        job.Add(ItemKind.Box, name).SayOf(name, BoxFacts.Cable, "16/2").SayOf(name, BoxFacts.Left, left);
}

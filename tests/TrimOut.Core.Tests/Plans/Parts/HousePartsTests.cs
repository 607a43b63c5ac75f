using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Parts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Parts;

public class HousePartsTests
{
    [Fact]
    public void UnitsAreCountedByKind()
    {
        var job = new TestJob().Window("W01").Window("W02", kind: "Cellular").Window("W03");
        Assert.Equal((2m, "units of this kind: W01, W03"), Line(job, "Roller"));
        Assert.Equal((1m, "units of this kind: W02"), Line(job, "Cellular"));
    }

    // Supports from 108 in on for the generic roller (common practice, no published source).
    [Fact]
    public void CentreSupportsAreCountedFromTheirWidthOn()
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03").Say("W01", WindowFacts.RoughWidth, "108")
            .Say("W02", WindowFacts.RoughWidth, "107 63/64");
        Assert.Equal((1m, "units 108\" wide or wider: W01; no width yet: W03"), Line(job, "Roller: center support"));
    }

    /// <summary>Outside a unit is wider than its opening, by how much nobody said yet: under the limit that is no "no", at the limit it is a "yes".</summary>
    [Fact]
    public void OutsideWithoutAnOverlapASupportIsLeftOpenUnderItsWidth()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W01", WindowFacts.RoughWidth, "108").Say("W02", WindowFacts.RoughWidth, "107")
            .Say("W01", WindowFacts.Mount, "outside").Say("W02", WindowFacts.Mount, "outside");
        Assert.Equal((1m, "units 108\" wide or wider: W01; no width yet: W02"), Line(job, "Roller: center support"));
        Assert.Equal((2m, "units 108\" wide or wider: W01, W02"), Line(job.Say("W02", WindowFacts.OverlapEachSide, "1/2"), "Roller: center support"));
    }

    [Fact]
    public void ASheetThatSaysNothingIsNoCount() =>
        Assert.Null(Line(new TestJob().Window("W01").SayOf("Roller", CoveringKindFacts.CentreFrom, ""), "Roller: center support").Count);

    [Fact]
    public void AKindThatNeverNeedsASupportHasNoLineOfThem() => Assert.DoesNotContain(
        HouseParts.Of(new TestJob().Window("W01").SayOf("Roller", CoveringKindFacts.CentreFrom, "none").House), l => l.Name == "center support");

    // 60 ft of legs and a tenth more, 3 ft and 6 ft of tails: 75 ft a run.
    [Fact]
    public void CableIsCountedFromWhatTheRunsTakeOffTheirBoxes()
    {
        var job = Jobs.Roughed("W02", Jobs.Roughed());
        Assert.Equal((150m, "legs, allowance and both tails of 2 runs; allowance 10 %: what the program began with, typed by nobody"), Line(job, "16/2"));
        Assert.Equal(
            (1m, "cut plan for what is not pulled yet, 2 runs; on hand 0 boxes; 500 ft in a new one; no plan needs fewer"), Line(job, "16/2: boxes to buy"));
    }

    [Fact]
    public void AnAllowanceThatSomebodyTypedIsNotMarked() => Assert.DoesNotContain("typed by nobody",
        Line(Jobs.Roughed().SayOf("", HouseFacts.CableAllowance, "15"), "16/2").From, StringComparison.Ordinal);

    [Fact]
    public void WhatIsMissingBeforePanelsCanBeCountedIsNamed()
    {
        var job = Jobs.Roughed().WithPanel("P1").SayOf("Invented supply", PanelTypeFacts.UnitsPerOutput, "");
        Assert.Equal((null, "the sheet of Invented supply does not say yet how many units an output feeds"), Line(job, "More panels"));
        job.SayOf("Invented supply", PanelTypeFacts.UnitsPerOutput, "1").SayOf("Invented supply", PanelTypeFacts.Outputs, "");
        Assert.Equal((null, "the sheet of Invented supply does not say yet how many outputs it has"), Line(job, "More panels"));
        Assert.Equal((null, "the type of P1 is not known"), Line(job.SayOf("P1", PanelFacts.Type, ""), "More panels"));
    }

    [Fact]
    public void ABoxOnHandIsNotBought()
    {
        var job = Jobs.Roughed().Add(ItemKind.Box, "Box 1").SayOf("Box 1", BoxFacts.Cable, "16/2").SayOf("Box 1", BoxFacts.Left, "80 ft");
        Assert.Equal(0m, Line(job, "16/2: boxes to buy").Count);
        Assert.Equal(1m, Line(job.SayOf("Box 1", BoxFacts.Left, "74 ft"), "16/2: boxes to buy").Count);
    }

    [Fact]
    public void ARunWithoutALengthIsSaidSo() =>
        Assert.Equal((75m, "legs, allowance and both tails of 1 run; no length yet: W02; allowance 10 %: what the program began with, typed by nobody"),
            Line(Jobs.Roughed().Window("W02").Say("W02", RunFacts.Cable, "16/2"), "16/2"));

    [Fact]
    public void BoxesAreNoNumberWhileNoRunHasALengthAndAtLeastANumberWhileSomeHaveOne()
    {
        var none = new TestJob().Window("W01").Window("W02").Say("W01", RunFacts.Cable, "16/2").Say("W02", RunFacts.Cable, "16/2");
        Assert.Equal((null, "no run that waits to be cut has a length; no length yet: W01, W02"), Line(none, "16/2: boxes to buy"));
        Assert.Equal("", Shown(none, "16/2"));
        var some = Jobs.Roughed().Window("W02").Say("W02", RunFacts.Cable, "16/2");
        Assert.Equal("cut plan for those whose length is known, 1 run; no length yet: W02", Line(some, "16/2: boxes to buy").From);
        Assert.Equal("at least 1", Shown(some, "16/2: boxes to buy"));
        Assert.Equal("at least 75", Shown(some, "16/2"));
        // A box on hand holds the run that is known: how many are to be bought for the other one nobody knows.
        some.Add(ItemKind.Box, "Box 1").SayOf("Box 1", BoxFacts.Cable, "16/2").SayOf("Box 1", BoxFacts.Left, "80 ft");
        Assert.Equal("", Shown(some, "16/2: boxes to buy"));
        Assert.Equal("1", Shown(Jobs.Roughed(), "16/2: boxes to buy"));
    }

    [Fact]
    public void ARunThatMayNotBeCutIsNamedAndNotCounted()
    {
        var job = Jobs.Roughed().SayOf("16/2", CableTypeFacts.LongestRun, "40 ft");
        Assert.Equal((null, "no run that waits may be cut yet; longer than its cable may be, and not to be cut: W01"), Line(job, "16/2: boxes to buy"));
        Assert.Equal("", Shown(job, "16/2"));
        Assert.Contains("longer than its cable may be, and not to be cut: W01", Line(job, "16/2").From, StringComparison.Ordinal);
    }

    [Fact]
    public void ABoxThatNobodyMeasuredMakesTheBoxesToBuyNoNumber()
    {
        var job = Jobs.Roughed().Add(ItemKind.Box, "Box 1").SayOf("Box 1", BoxFacts.Cable, "16/2");
        Assert.Equal((null, "1 without what is in boxes on hand that nobody measured; it is not known how much is left in: Box 1"),
            Line(job, "16/2: boxes to buy"));
    }

    [Fact]
    public void CentreSupportsOfUnitsWithoutAWidthAreNoNumber() =>
        Assert.Null(Line(new TestJob().Window("W01"), "Roller: center support").Count);

    // Ten outputs on a panel: common practice, no published source.
    [Fact]
    public void TheEleventhUnitAsksForASecondPanel()
    {
        var job = new TestJob().WithPanel();
        foreach (var n in Enumerable.Range(1, 10))
            job.Window($"W{n:00}");
        Assert.Equal((0m, "10 units on panels; the panels of the house have room for 10"), Line(job, "More panels"));
        Assert.Equal((1m, "11 units on panels; the panels of the house have room for 10; 10 to a panel"), Line(job.Window("W11"), "More: Invented supply"));
        Assert.Equal((1m, "panels of the house: P1"), Line(job, "Invented supply"));
    }

    [Fact]
    public void AHubIsAskedForBeforeThereIsOne()
    {
        var job = new TestJob().Window("W01");
        Assert.Equal((1m, "1 unit and 0 remotes; 75 to a hub"), Line(job, "More: Hub"));
        Assert.Equal(0m, Line(job.Add(ItemKind.Hub, "Main"), "More hubs").Count);
    }

    [Fact]
    public void RemotesAreCountedByRoomAndPlatesByGangs()
    {
        var job = new TestJob().Room("Kitchen").Room("Hall");
        (string, string, string)[] remotes =
            [("R1", "Kitchen", "2-gang, left"), ("R2", "Kitchen", "2-gang, right"), ("R3", "Hall", ""), ("R4", "Hall", "3-gang, left")];
        foreach (var (name, room, plate) in remotes)
        {
            job.Add(ItemKind.Remote, name).SayOf(name, RemoteFacts.Type, "Wall remote").SayOf(name, RemoteFacts.Room, room);
            if (plate.Length > 0)
                job.SayOf(name, RemoteFacts.Plate, plate);
        }
        Assert.Equal((2m, "remotes of that room: R1, R2"), Line(job, "Wall remote, Kitchen"));
        Assert.Equal((1m, "Kitchen (R1, R2)"), Line(job, "2-gang wall plate"));
        Assert.Equal((1m, "Hall (R3, no plate said)"), Line(job, "1-gang wall plate"));
        Assert.Equal((1m, "Hall (R4)"), Line(job, "3-gang wall plate"));
    }

    [Fact]
    public void AHandheldTakesNoPlate() =>
        Assert.DoesNotContain(HouseParts.Of(new TestJob().Add(ItemKind.Remote, "R1").SayOf("R1", RemoteFacts.Type, "Handheld").House),
            l => l.Part.In(House.Empty).Contains("plate", StringComparison.Ordinal));

    [Fact]
    public void WhatASheetCountsIsCountedForEachUnitAndRun()
    {
        var job = Jobs.Roughed("W02", Jobs.Roughed()).SayOf("Roller", CoveringKindFacts.PartsPerUnit, "2 end brackets, 6 screws");
        Assert.Equal((12m, "6 for each of 2 units"), Line(job, "Roller: screws"));
        Assert.Equal((4m, "2 for each of 2 runs"), Line(job, "16/2: splice connectors"));
        Assert.Equal((4m, "both ends of 2 runs"), Line(job, "Cable label"));
        Assert.Equal((null, "the sheet of Roller says nothing of them"),
            Line(job.SayOf("Roller", CoveringKindFacts.PartsPerUnit, ""), "Roller: parts per unit"));
    }

    [Fact]
    public void OtherPowerIsCountedByKind() =>
        Assert.Equal((1m, "power of W01"), Line(new TestJob().Window("W01").Say("W01", UnitFacts.Power, "battery"), "Battery for Roller"));

    [Fact]
    public void AnEmptyHouseTakesNothing() => Assert.Empty(HouseParts.Of(new TestJob().House));

    private static string Shown(TestJob job, string part) => HouseParts.Of(job.House).Single(l => l.Part.In(job.House) == part).Shown;

    private static (decimal? Count, string From) Line(TestJob job, string part) =>
        HouseParts.Of(job.House).Single(l => l.Part.In(job.House) == part) is var line ? (line.Count, line.CountedFrom.In(job.House)) : default;
}

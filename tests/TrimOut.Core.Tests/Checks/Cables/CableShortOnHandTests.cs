using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class CableShortOnHandTests
{
    private static readonly CableShortOnHand Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.SayOf("16/2", CableTypeFacts.OnHand, "50 ft"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.SayOf("16/2", CableTypeFacts.OnHand, "75 ft"));

    // 60 ft of legs and a tenth more, tails of 3 and 6 ft: 75 ft.
    [Fact]
    public void AsMuchAsIsNeededIsFine() => Assert.IsType<Outcome.Fine>(OnHand("75").Of(Check, "16/2"));

    [Fact]
    public void ALittleLessIsACaution()
    {
        var found = OnHand("74'-11 63/64\"").FaultOf(Check, "16/2");
        Assert.Equal("Needed are 75 ft of 16/2 for 1 run; 74'-11 63/64\" are on hand.", found.Message);
        Assert.Equal("Bring 1 ft more, in whole runs: a run has no splice.", found.Mend);
    }

    [Fact]
    public void RunsAreCounted()
    {
        var job = Jobs.Roughed("W02", OnHand("75"));
        Assert.Equal("Needed are 150 ft of 16/2 for 2 runs; 75'-0\" are on hand.", job.FaultOf(Check, "16/2").Message);
        job.Do(AddItems.Leg(job.Run("W02")));
        Assert.Equal("cable on hand; needed are at least 75 ft of 16/2 for 2 runs", job.SayOf("16/2", CableTypeFacts.OnHand, "").MissingOf(Check, "16/2"));
    }

    [Fact]
    public void WhatIsLeftInTheBoxesCounts()
    {
        var job = OnHand("10").Add(ItemKind.Box, "A").SayOf("A", BoxFacts.Cable, "16/2").SayOf("A", BoxFacts.Left, "50").Add(ItemKind.Box, "B")
            .SayOf("B", BoxFacts.Cable, "16/2").SayOf("B", BoxFacts.Left, "25");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "16/2"));
        Assert.IsType<Outcome.Found>(job.SayOf("B", BoxFacts.Left, "24").Of(Check, "16/2"));
    }

    [Fact]
    public void AnUnknownStockShowsWhatIsNeeded() =>
        Assert.Equal("cable on hand; needed are 75 ft of 16/2 for 1 run", Jobs.Roughed().MissingOf(Check, "16/2"));

    [Fact]
    public void ATailThatIsNotThereYetIsPlannedAsTheWholeWidth() =>
        Assert.IsType<Outcome.Fine>(OnHand("75").Forget("W01", RunFacts.TailAtWindow).Forget("W01", RunFacts.TailAtPanel).Of(Check, "16/2"));

    [Fact]
    public void ARunOfUnknownLengthIsNotAPass() =>
        Assert.Equal("length of the run of W02", Jobs.Walked("W02", OnHand("500")).Say("W02", RunFacts.Cable, "16/2").MissingOf(Check, "16/2"));

    [Fact]
    public void OneRunOfUnknownLengthGivesNoFigure()
    {
        var job = Jobs.Roughed();
        job.Do(AddItems.Leg(job.Run("W01")));
        Assert.Equal("on hand of 16/2 in the kit", job.MissingOf(Check, "16/2"));
    }

    private static TestJob OnHand(string feet) => Jobs.Roughed().SayOf("16/2", CableTypeFacts.OnHand, feet);

    [Fact]
    public void WhatIsPulledIsNotNeededAnyMore()
    {
        var job = Jobs.Roughed("W02", Jobs.Roughed()).SayOf("16/2", CableTypeFacts.OnHand, "80 ft");
        Assert.StartsWith("Needed are", job.FaultOf(Check, "16/2").Message, StringComparison.Ordinal);
        job.Mark("W01", "cable-pulled");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "16/2"));
        job.SayOf("16/2", CableTypeFacts.OnHand, "10 ft");
        Assert.Contains("for 1 run", job.FaultOf(Check, "16/2").Message, StringComparison.Ordinal);
        job.Mark("W02", "cable-pulled");
        Assert.Empty(Check.Run(job.House));
    }

    [Fact]
    public void TheWorkingTellsRunsNeedAndStock() =>
        Assert.Equal("runs 1, needed 75 ft, on hand 74'-11 63/64\"", OnHand("74'-11 63/64\"").FaultOf(Check, "16/2").Worked);
}

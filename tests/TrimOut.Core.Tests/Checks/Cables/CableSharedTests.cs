using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class CableSharedTests
{
    private static readonly CableShared Check = new();

    public static Example Finds => new(() => Own("2"), j => j.SayOf("Attic supply", PanelTypeFacts.UnitsPerOutput, "1"));

    public static Example Passes => new(() => Own("1"), j => j.SayOf("Attic supply", PanelTypeFacts.UnitsPerOutput, "2"));

    [Fact]
    public void TwoUnitsOnOneCableAreRefusedWhileTheSheetAllowsOne()
    {
        var found = Pair("1").Fault(Check, "W02");
        Assert.Equal("W01, W02 share one cable; the sheet allows 1 unit on an output. All together, 9.96 V would arrive here.", found.Message);
        Assert.Contains("W01, W02", Pair("1").Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    // 1 mm2 solid at 20 C is 0.0181 ohm per metre (IEC 60228). 20 m with 2 A lose 1.448 V, 16.34 m more with 1 A 0.5915 V: 9.96 V of 12 V are left.
    [Theory]
    [InlineData("9.96", true)]
    [InlineData("9.961", false)]
    public void WhereItIsAllowedTheCurrentsAdd(string least, bool fine) =>
        Assert.Equal(fine, Pair("2").SayOf("Roller", CoveringKindFacts.LeastVolts, least).Judge(Check, "W02") is Outcome.Fine);

    [Fact]
    public void TheFirstUnitGetsMore() => Pair("2").SayOf("Roller", CoveringKindFacts.LeastVolts, "10.55").Fine(Check, "W01");

    [Fact]
    public void TheTableCountsTheWholeWay()
    {
        Pair("2").SayOf("Roller", CoveringKindFacts.LeastVolts, "9").SayOf("16/2", CableTypeFacts.LongestRun, "36.34 m").Fine(Check, "W02");
        Assert.StartsWith("From the panel to it are 36.34 m of cable; the kit's table ends at 36.33 m.",
            Pair("2").SayOf("Roller", CoveringKindFacts.LeastVolts, "9").SayOf("16/2", CableTypeFacts.LongestRun, "36.33 m").Fault(Check, "W02").Message,
                StringComparison.Ordinal);
    }

    [Fact]
    public void ABranchIsNotJudgedAsIfItWereAlone()
    {
        Pair("2").Silent(new VoltsShortAtUnit(), "W02");
        Pair("2").Silent(new RunPastKitTable(), "W02");
    }

    [Fact]
    public void ABranchOfABranchAddsItsCurrentToBoth()
    {
        var job = Unit(Pair("3"), "W03", "10 m").Say("W03", RunFacts.BranchesOff, "W02");
        // 20 m with 3 A, 16.34 m with 2 A, 10 m with 1 A at 0.0362 ohm out and back: 12 - 2.172 - 1.183 - 0.362.
        Assert.Contains(("arrive", "8.283 V"), job.SayOf("Roller", CoveringKindFacts.LeastVolts, "9").Fault(Check, "W03").Working!.Inputs);
    }

    [Fact]
    public void ACircleIsFound() => Assert.Equal("W02 branches off a cable that comes back to it: none of them begins at a panel.",
        Pair("2").Say("W01", RunFacts.BranchesOff, "W02").Fault(Check, "W02").Message);

    [Fact]
    public void UntilItIsLandedThePanelsOfTheHouseAreAsked() =>
        Assert.Contains("the sheet allows 1 unit", Pair("1").Forget("W01", RunFacts.Panel).Forget("W01", RunFacts.Output).Fault(Check, "W02").Message,
            StringComparison.Ordinal);

    [Fact]
    public void ASheetThatSaysNothingIsNotAPass() => Pair("").Lacks(Check, "W02", "units per output of Invented supply in the kit");

    [Fact]
    public void AnUnknownLengthIsNotAPass() => Pair("2").Forget("W01", RunFacts.TailAtPanel).Lacks(Check, "W02", "tail at panel of W01");

    [Fact]
    public void AHouseOfHomeRunsHasNone() => Assert.Empty(Check.Run(Jobs.Roughed().House));

    [Fact]
    public void TheFieldThatFixesItIsThatOfABranch()
    {
        var job = Pair("1");
        Assert.Equal(FieldRef.To(job.Run("W02").Item, RunFacts.BranchesOff), job.Fault(Check, "W01").Mends);
        Assert.Equal(FieldRef.To(job.Run("W02").Item, RunFacts.BranchesOff), job.Fault(Check, "W02").Mends);
        job = Unit(job, "W03", "10 m").Say("W03", RunFacts.BranchesOff, "W02");
        Assert.Equal(FieldRef.To(job.Run("W03").Item, RunFacts.BranchesOff), job.Fault(Check, "W03").Mends);
    }

    [Fact]
    public void SeveralThatAreAllowedAreCounted() => Assert.StartsWith("W01, W02, W03 share one cable; the sheet allows 2 units on an output.",
        Unit(Pair("2"), "W03", "10 m").Say("W03", RunFacts.BranchesOff, "W02").Fault(Check, "W03").Message, StringComparison.Ordinal);

    [Fact]
    public void BehindDrywallNoHomeRunIsPulled()
    {
        Assert.StartsWith("Pull a home run", Pair("1").Fault(Check, "W02").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Ask the maker", Pair("1").Mark("W02", "cable-found").Fault(Check, "W02").Mend, StringComparison.Ordinal);
    }

    // A tail of 1 m at the window and one of 2 m at a panel are stretches of the branch too: 19.34 m.
    [Fact]
    public void TailsOfABranchCount() => Assert.Contains(("its stretch", "19.34 m"), Assert.IsType<Outcome.Fine>(
        Pair("2").SayOf("Roller", CoveringKindFacts.LeastVolts, "9").Say("W02", RunFacts.TailAtWindow, "1000 mm").Say("W02", RunFacts.TailAtPanel, "2000 mm")
            .Judge(Check, "W02")).Working!.Inputs);

    [Fact]
    public void TheLongestRunOfTheTableIsTold()
    {
        var job = Pair("2").SayOf("Roller", CoveringKindFacts.LeastVolts, "9").SayOf("16/2", CableTypeFacts.LongestRun, "50 m");
        Assert.Contains(("longest run", "50 m"), Assert.IsType<Outcome.Fine>(job.Judge(Check, "W02")).Working!.Inputs);
        Assert.Contains(("longest run", "not in the table"), Assert.IsType<Outcome.Found>(job.SayOf("16/2", CableTypeFacts.LongestRun, "")
            .SayOf("Roller", CoveringKindFacts.LeastVolts, "12").Judge(Check, "W02")).Working!.Inputs);
        job.SayOf("Roller", CoveringKindFacts.LeastVolts, "9").Lacks(Check, "W02", "longest run of 16/2 in the kit");
    }

    [Fact]
    public void ASheetWithoutAMinimumIsNotAPassEither() =>
        Pair("2").SayOf("Roller", CoveringKindFacts.LeastVolts, "").Lacks(Check, "W02", "minimum volts of Roller in the kit of W01");

    // Two types in the kit that do not agree say nothing of a house in which one of them stands, and all while none does.
    [Fact]
    public void OfSeveralTypesThoseOfTheHouseAreAskedOrAllOfTheKit()
    {
        var job = Pair("2").SayOf("Roller", CoveringKindFacts.LeastVolts, "9").Add(ItemKind.PanelType, "Small box")
            .SayOf("Small box", PanelTypeFacts.UnitsPerOutput, "1").SayOf("Small box", PanelTypeFacts.Supply, "12");
        job.Forget("W01", RunFacts.Output).Forget("W01", RunFacts.Panel).Fine(Check, "W02");
        job.Do(RemoveItems.Remove(job.House, job.House.Panels[0].Item)).Lacks(Check, "W02", "panel");
    }

    /// <summary>W01 20 m from the panel, W02 16.34 m farther on the same cable; each draws 1 A when it starts.</summary>
    private static TestJob Pair(string allowed)
    {
        var job = Jobs.Metric().WithPanel().SayOf("Invented supply", PanelTypeFacts.UnitsPerOutput, allowed)
            .SayOf("Test house", HouseFacts.ConductorTemperature, "20")
            .SayOf("16/2", CableTypeFacts.Conductor, "1 mm2").SayOf("16/2", CableTypeFacts.Stranding, "solid");
        Unit(job, "W01", "19 m").Say("W01", RunFacts.TailAtPanel, "1000 mm").Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, "1");
        return Unit(job, "W02", "16.34 m").Say("W02", RunFacts.BranchesOff, "W01");
    }

    private static TestJob Unit(TestJob job, string tag, string way) =>
        job.Window(tag).Say(tag, RunFacts.Cable, "16/2").Legs(tag, (way, CablePlace.InWall)).Say(tag, RunFacts.TailAtWindow, "0");

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own(string allowed) => Pair("1").Add(ItemKind.PanelType, "Attic supply").SayOf("P1", PanelFacts.Type, "Attic supply")
        .SayOf("Attic supply", PanelTypeFacts.Supply, "21").SayOf("Attic supply", PanelTypeFacts.UnitsPerOutput, allowed)
        .SayOf("Roller", CoveringKindFacts.LeastVolts, "18.5").SayOf("Roller", CoveringKindFacts.RunningCurrent, "0.5")
        .SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.7").SayOf("16/2", CableTypeFacts.LongestRun, "47 m");
}

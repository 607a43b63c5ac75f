using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class RunPastKitTableTests
{
    private static readonly RunPastKitTable Check = new();

    public static Example Finds => new(Own, j => j.Legs("W01", ("90 ft", CablePlace.InWall)));

    public static Example Passes => new(Own, j => j.Legs("W01", ("80 ft", CablePlace.InWall)));

    // 200, 120 and 75 ft for 16, 18 and 20 AWG at 12 V: common practice, no published source. Tails here are 9 ft together.
    [Theory]
    [InlineData("16/2", "191")]
    [InlineData("18/2", "111")]
    [InlineData("20/2", "66")]
    public void ARunAsLongAsTheTableAllowsIsFine(string cable, string legs) => Run(cable, legs).Fine(Check, "W01");

    [Theory]
    [InlineData("16/2", "191'-0 1/64\"", "200'-0 1/64\"")]
    [InlineData("18/2", "111'-0 1/64\"", "120'-0 1/64\"")]
    [InlineData("20/2", "66'-0 1/64\"", "75'-0 1/64\"")]
    public void ALittleMoreIsAStop(string cable, string legs, string length) =>
        Assert.StartsWith($"The run is {length} of {cable}. The kit's table ends at ", Run(cable, legs).Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void BothLimitsAreShownAndTheTighterGoverns()
    {
        // 16 AWG stranded at 30 C, 1 A, 12 to 10.2 V: 210.8 ft by voltage drop, so that the table's 200 ft are tighter.
        var found = Run("16/2", "195").Fault(Check, "W01");
        Assert.Equal("The run is 204'-0\" of 16/2. The kit's table ends at 200 ft, voltage drop at 210.8 ft: the table governs.", found.Message);
        Assert.Contains(("longest run by voltage drop", "210.8 ft"), found.Working!.Inputs);
    }

    [Fact]
    public void WhereVoltageDropIsTheTighterTheTableDoesNotGovern()
    {
        var message = Run("16/2", "212").SayOf("16/2", CableTypeFacts.LongestRun, "220 ft").Fault(Check, "W01").Message;
        Assert.Contains("ends at 220 ft, voltage drop at 210.8 ft", message, StringComparison.Ordinal);
        Assert.DoesNotContain("the table governs", message, StringComparison.Ordinal);
    }

    /// <summary>The volts that arrive need no least volts and no table: a blank of these withholds nothing that is known.</summary>
    [Fact]
    public void VoltsArriveAndTheTableEndsWhateverTheLeastVoltsAre()
    {
        var job = Run("16/2", "150");
        string Value(string name) => UnitFigures.Of(job.Unit("W01")).Single(f => f.Name == name).Value;
        var (running, starting) = (job.Run("W01").VoltsWhileRunning, job.Run("W01").VoltsWhileStarting);
        var (limits, oneWay) = (job.Run("W01").Limits!.Value, job.Run("W01").OneWay!.Value);
        Assert.Equal((limits.WhileRunning(oneWay), limits.WhileStarting(oneWay)), (running!.Value, starting!.Value));
        Assert.StartsWith("200 ft", Value("Longest run"), StringComparison.Ordinal);
        var (volts, loaded) = (Value("Volts at the unit"), Value("Loaded volts to expect"));
        job.SayOf("Roller", CoveringKindFacts.LeastVolts, "");
        Assert.Equal((running, starting), (job.Run("W01").VoltsWhileRunning, job.Run("W01").VoltsWhileStarting));
        Assert.Equal((volts, loaded), (Value("Volts at the unit"), Value("Loaded volts to expect")));
        Assert.StartsWith("200 ft, by the kit's table alone", Value("Longest run"), StringComparison.Ordinal);
        job.SayOf("Roller", CoveringKindFacts.StartingCurrent, "");
        Assert.Contains("not known starting", Value("Volts at the unit"), StringComparison.Ordinal);
    }

    [Fact]
    public void BehindDrywallNoThickerCableIsPulled()
    {
        Assert.StartsWith("Pull a thicker cable", Run("16/2", "195").Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Land it on a panel nearer", Run("16/2", "195").Mark("W01", "cable-found").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void LegsAloneThatAreTooLongAreFoundBeforeTheTailsAreKnown() =>
        Assert.StartsWith("The run is at least 201'-0\"", Run("16/2", "201").Forget("W01", RunFacts.TailAtPanel).Forget("W01", RunFacts.TailAtWindow)
            .Fault(Check, "W01").Message, StringComparison.Ordinal);

    // A tail of the window's 36 in and the house's 72 in, 9 ft together, where none is left yet.
    [Fact]
    public void PlannedTailsThatMakeItTooLongAreFoundBeforeItIsPulled()
    {
        Assert.StartsWith("With the tails that are planned the run is 201 ft of 16/2.", Planned("192").Fault(Check, "W01").Message, StringComparison.Ordinal);
        Planned("191").Lacks(Check, "W01", "tail at window");
        Planned("192").Forget("W01", WindowFacts.RoughWidth).Lacks(Check, "W01", "tail at window");
    }

    // 191 ft with a tenth more for bends and 9 ft of tails would be 219.1 ft of a cable whose table ends at 200.
    [Fact]
    public void NoMoreIsCutThanMayBeUsed()
    {
        Assert.Equal(Length.FromFeet(200), Planned("191").Run("W01").Needed);
        Assert.Equal(Length.FromFeet(119), Planned("100").Run("W01").Needed);
        Assert.Equal("219.1 ft", Planned("191").Run("W01").ShownBeforeLimit);
        Assert.Contains(("no more than its cable may be", "200 ft, not 219.1 ft\u00A0?"),
            UnitFigures.Of(Planned("191").House.Units[0]).Single(f => f.Name == "Cable off a box").Working.Inputs);
        Assert.Null(Planned("100").Run("W01").ShownBeforeLimit);
    }

    [Fact]
    public void AnUnknownTailIsNotAPass() => Run("16/2", "60").Forget("W01", RunFacts.TailAtPanel).Lacks(Check, "W01", "tail at panel");

    [Fact]
    public void ARunWithoutLegsIsNotAPass() => Jobs.Walked().Say("W01", RunFacts.Cable, "16/2").Lacks(Check, "W01", "legs with their lengths");

    private static TestJob Planned(string legs) => Run("16/2", legs).Forget("W01", RunFacts.TailAtPanel).Forget("W01", RunFacts.TailAtWindow);

    private static TestJob Run(string cable, string legs) => Jobs.Walked().Say("W01", RunFacts.Cable, cable).Legs("W01", (legs, CablePlace.InWall))
        .Say("W01", RunFacts.TailAtWindow, "36").Say("W01", RunFacts.TailAtPanel, "72");

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Jobs.Roughed().SayOf("16/2", CableTypeFacts.LongestRun, "155 ft");
}

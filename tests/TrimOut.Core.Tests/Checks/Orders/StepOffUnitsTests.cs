using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Orders;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Orders;

public class StepOffUnitsTests
{
    private static readonly StepOffUnits Check = new();

    public static Example Finds => new(() => Jobs.Walked(job: Jobs.Metric()), j => j.SayOf("Roller", CoveringKindFacts.RoundTo, "3.175 mm"));

    public static Example Passes => new(() => Jobs.Walked(job: Jobs.Metric()), j => j.SayOf("Roller", CoveringKindFacts.RoundTo, "2 mm"));

    [Theory]
    [InlineData("1 mm")]
    [InlineData("0.5 mm")]
    [InlineData("2.5 mm")]
    [InlineData("5 mm")]
    public void AStepOfMillimetresIsFineInAHouseInMillimetres(string step) => Assert.IsType<Outcome.Fine>(Of(Jobs.Metric(), step));

    [Theory]
    [InlineData("1/16\"")]
    [InlineData("1/8\"")]
    [InlineData("1/4\"")]
    [InlineData("1/2\"")]
    [InlineData("1\"")]
    public void AStepOfInchesIsNone(string step) => Assert.IsType<Outcome.Found>(Of(Jobs.Metric(), step));

    [Theory]
    [InlineData("1/8\"")]
    [InlineData("1/64\"")]
    [InlineData("3/8\"")]
    [InlineData("0.1 in")]
    public void AStepOfInchesIsFineInAHouseInInches(string step) => Assert.IsType<Outcome.Fine>(Of(new TestJob(), step));

    [Theory]
    [InlineData("1 mm")]
    [InlineData("5 mm")]
    public void AStepOfMillimetresIsNone(string step) => Assert.IsType<Outcome.Found>(Of(new TestJob(), step));

    [Fact]
    public void TheStepAndTheUnitsAreNamed() => Assert.Equal("Sizes of Roller are ordered in steps of 3.175 mm, and the house is measured in millimeters.",
        Jobs.Walked(job: Jobs.Metric()).SayOf("Roller", CoveringKindFacts.RoundTo, "1/8\"").FaultOf(Check, "Roller").Message);

    [Fact]
    public void AKindWithoutAStepIsNotAPass() =>
        Assert.Equal("order step of Roller in the kit", Jobs.Walked().SayOf("Roller", CoveringKindFacts.RoundTo, "").MissingOf(Check, "Roller"));

    [Fact]
    public void AKindThatNobodyUsesOrHeldAgainstItsSheetIsNotJudged() => Assert.Empty(Check.Run(new TestJob(DisplayUnits.Millimetres).House));

    private static Outcome Of(TestJob job, string step) => Jobs.Walked(job: job).SayOf("Roller", CoveringKindFacts.RoundTo, step).Of(Check, "Roller");

    [Theory]
    [InlineData(DisplayUnits.Inches, "1 mm", "measured in inches.", "a part of an inch that a tape shows.")]
    [InlineData(DisplayUnits.Millimetres, "1/8\"", "measured in millimeters.", "whole millimeters, or the part of one that it says.")]
    public void TheMendIsInTheUnitsOfTheHouse(DisplayUnits units, string step, string message, string mend)
    {
        var found = Jobs.Walked(job: new TestJob(units)).SayOf("Roller", CoveringKindFacts.RoundTo, step).FaultOf(Check, "Roller");
        Assert.EndsWith(message, found.Message, StringComparison.Ordinal);
        Assert.EndsWith(mend, found.Mend, StringComparison.Ordinal);
    }
}

using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Evidence;

public class SheetContradictsItselfTests
{
    private static readonly SheetContradictsItself Check = new();

    public static Example Finds => new(() => new TestJob(), j => j.SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.4"));

    public static Example Passes => new(() => new TestJob(), j => j.SayOf("Roller", CoveringKindFacts.StartingCurrent, "1.2"));

    /// <summary>By sheet and fact: a value that is just possible, and one that is not.</summary>
    public static TheoryData<string, string, string, string> Limits => new()
    {
        { "Roller", CoveringKindFacts.LeastVolts.Name, "12", "12.001" },
        { "Roller", CoveringKindFacts.StartingCurrent.Name, "0.8", "0.799" },
        { "Roller", CoveringKindFacts.DepthFlush.Name, "2 1/2", "2 31/64" },
        { "Roller", CoveringKindFacts.GapMost.Name, "1/8", "7/64" },
        { "Roller", CoveringKindFacts.Widest.Name, "108", "107" },
        { "10-output panel", PanelTypeFacts.TotalCurrent.Name, "2.5", "2.499" },
    };

    [Theory]
    [MemberData(nameof(Limits))]
    public void TwoValuesThatAreAlikeAreFineAndPastEachOtherAStop(string sheet, string fact, string fine, string wrong)
    {
        var kind = sheet == "Roller" ? ItemKind.CoveringKind : ItemKind.PanelType;
        var said = FactTable.Of(kind).Single(f => f.Name == fact);
        Assert.IsType<Outcome.Fine>(new TestJob().SayOf(sheet, said, fine).Of(Check, sheet));
        Assert.IsType<Outcome.Found>(new TestJob().SayOf(sheet, said, wrong).Of(Check, sheet));
    }

    [Fact]
    public void BothLinesAreNamed() => Assert.Equal("Running current: 0.8 A. Starting current: 0.4 A. The first can't be more than the second.",
        new TestJob().SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.4").FaultOf(Check, "Roller").Message);

    [Fact]
    public void OneLineWithoutTheOtherIsNotAPass() =>
        Assert.Equal("motor volts", new TestJob().SayOf("Roller", CoveringKindFacts.MotorVolts, "").MissingOf(Check, "Roller"));

    [Fact]
    public void ASheetWithNothingToCompareSaysNothing() => Assert.DoesNotContain(Check.Run(new TestJob().House), r => r.Subject.Kind == ItemKind.CableType);
}

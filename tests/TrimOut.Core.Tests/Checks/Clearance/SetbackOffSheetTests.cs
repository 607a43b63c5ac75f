using TrimOut.Core.Checks.Clearance;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Clearance;

public class SetbackOffSheetTests
{
    private static readonly SetbackOffSheet Check = new();

    public static Example Finds => new(Sheet, j => j.Say("W01", UnitFacts.Setback, "3"));

    public static Example Passes => new(Sheet, j => j.Say("W01", UnitFacts.Setback, "1 1/2"));

    [Fact]
    public void AnEighthOffIsFine()
    {
        Sheet().Say("W01", UnitFacts.Setback, "1 5/8").Fine(Check, "W01");
        Sheet().Say("W01", UnitFacts.Setback, "1 3/8").Fine(Check, "W01");
    }

    [Fact]
    public void AMarkMoreIsACaution() => Assert.Equal("Its brackets are set back 1 11/16\"; the sheet of Roller has 1 1/2\".",
        Sheet().Say("W01", UnitFacts.Setback, "1 11/16").Fault(Check, "W01").Message);

    [Fact]
    public void AnUnknownLineOfTheSheetIsNotAPass() => Jobs.Measured().Say("W01", UnitFacts.Setback, "3").SayOf("Roller", CoveringKindFacts.Setback, "")
        .Lacks(Check, "W01", "bracket setback of Roller in the kit");

    [Fact]
    public void ASetbackThatNobodyMeasuredIsNotAPass() => Sheet().Lacks(Check, "W01", "bracket setback");

    private static TestJob Sheet() => Jobs.Measured().SayOf("Roller", CoveringKindFacts.Setback, "1 1/2");

    // A fascia of 3 in at the sheet's 1 1/2 in stands out of 4 in; set back 1 in it is flush. Set back more, it stands out farther.
    [Fact]
    public void LessIsLetPassOnlyWhereTheCoverIsFlushSo()
    {
        Sheet().Say("W01", WindowFacts.Depth, "4").Say("W01", UnitFacts.Setback, "1").Fine(Check, "W01");
        Sheet().Say("W01", WindowFacts.Depth, "4").Say("W01", UnitFacts.Setback, "2").Fault(Check, "W01");
        Sheet().Say("W01", UnitFacts.Setback, "1").Fault(Check, "W01");
    }
}

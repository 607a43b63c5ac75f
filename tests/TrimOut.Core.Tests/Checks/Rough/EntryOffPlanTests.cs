using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class EntryOffPlanTests
{
    private static readonly EntryOffPlan Check = new();

    public static Example Finds => new(Planned, j => j.Say("W01", UnitFacts.EntryAsBuilt, "33"));

    public static Example Passes => new(Planned, j => j.Say("W01", UnitFacts.EntryAsBuilt, "4"));

    [Fact]
    public void TwoInchesForPlasterAndTrimAreFine() => Planned().Say("W01", UnitFacts.EntryAsBuilt, "5").Fine(Check, "W01");

    [Fact]
    public void AMarkMoreIsACaution()
    {
        var found = Planned().Say("W01", UnitFacts.EntryAsBuilt, "5 1/16").Fault(Check, "W01");
        Assert.Equal("The cable was planned 3\" from the jamb on the left, and came out 5 1/16\" from it.", found.Message);
        Assert.Equal("Measure it again from the jamb on the left, and put right the figure that is wrong.", found.Mend);
    }

    [Fact]
    public void AnEntryThatNobodyFoundYetIsNotAPass() => Planned().Lacks(Check, "W01", "entry as built");

    private static TestJob Planned() => Jobs.Roughed().Say("W01", UnitFacts.EntrySide, "left").Say("W01", UnitFacts.EntryFromJamb, "3");

    [Fact]
    public void TheWorkingTellsBoth() =>
        Assert.Equal("planned 3\", as built 5 1/16\"", Planned().Say("W01", UnitFacts.EntryAsBuilt, "5 1/16").Fault(Check, "W01").Worked);

    [Fact]
    public void NearerToTheJambItIsACautionToo()
    {
        var job = Planned().Say("W01", UnitFacts.EntryFromJamb, "6").Say("W01", UnitFacts.EntryAsBuilt, "4");
        job.Fine(Check, "W01");
        job.Say("W01", UnitFacts.EntryAsBuilt, "3 15/16").Fault(Check, "W01");
    }

    [Fact]
    public void WithoutAPlanOrASideNothingIsOffAndABatteryHasNoEntry()
    {
        var built = Planned().Say("W01", UnitFacts.EntryAsBuilt, "5");
        built.Forget("W01", UnitFacts.EntrySide).Lacks(Check, "W01", "entry side");
        built.Forget("W01", UnitFacts.EntryFromJamb).Lacks(Check, "W01", "entry from jamb");
        built.Say("W01", UnitFacts.Power, "battery").Silent(Check, "W01");
    }
}

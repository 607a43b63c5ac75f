using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Safety;

public class CordWithinReachTests
{
    private static readonly CordWithinReach Check = new();

    public static Example Finds => new(() => Confirmed(Jobs.Walked()), j => j.Say("W01", UnitFacts.FreeCord, "8 1/16\""));

    public static Example Passes => new(() => Confirmed(Jobs.Walked()), j => j.Say("W01", UnitFacts.FreeCord, "8\""));

    [Fact]
    public void EightInchesAreTheMost()
    {
        Confirmed(Jobs.Walked()).Say("W01", UnitFacts.FreeCord, "8\"").Fine(Check, "W01");
        Assert.Equal("8 1/16\" of cord or chain hang free within reach; 8\" are the most.",
            Jobs.Walked().Say("W01", UnitFacts.FreeCord, "8 1/16\"").Fault(Check, "W01").Message);
    }

    [Fact]
    public void AHouseInMillimetresHasTheSameLimit()
    {
        Confirmed(Jobs.Walked(job: Jobs.Metric())).Say("W01", UnitFacts.FreeCord, "203").Fine(Check, "W01");
        Assert.Equal("204 mm of cord or chain hang free within reach; 203 mm are the most.",
            Jobs.Walked(job: Jobs.Metric()).Say("W01", UnitFacts.FreeCord, "204").Fault(Check, "W01").Message);
    }

    [Fact]
    public void ACordThatNobodyMeasuredIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "free cord");

    [Fact]
    public void ACordThatNobodyLooksAtInEveryPositionIsNotAPass() =>
        Jobs.Walked().Say("W01", UnitFacts.FreeCord, "0").Lacks(Check, "W01", "cord confirmed by");

    private static TestJob Confirmed(TestJob job) => job.Say("W01", UnitFacts.CordConfirmedBy, "The crew");

    [Fact]
    public void TheCordIsHeldTightAndThatIsWritten()
    {
        var found = Jobs.Walked().Say("W01", UnitFacts.FreeCord, "9").Fault(Check, "W01");
        Assert.Equal("free-cord", found.Mends.Field);
        Confirmed(Jobs.Walked()).Say("W01", UnitFacts.CordConfirmedBy, "none").Say("W01", UnitFacts.FreeCord, "0").Lacks(Check, "W01", "cord confirmed by");
    }
}

using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class LoopOffLengthTests
{
    private static readonly LoopOffLength Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstLoop, "open"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstLoop, "0.6"));

    // 50 m of 1 mm2 solid, one way: 2 x 50 x 0.0181 = 1.81 ohm at 20 C (IEC 60228); 10 % and 0.1 ohm are 0.281 ohm either way.
    [Theory]
    [InlineData("2.091")]
    [InlineData("1.529")]
    public void AReadingWithinTheToleranceIsFine(string ohms) => Read(ohms).Fine(Check, "W01");

    [Theory]
    [InlineData("2.092", "That is 57.79 m of cable: a thinner one")]
    [InlineData("1.528", "That is 42.2 m of cable: it is shorted there")]
    [InlineData("open", "A conductor is cut, or the far end is not shorted.")]
    public void AnotherReadingSaysWhatItMayBe(string ohms, string verdict)
    {
        var found = Read(ohms).Fault(Check, "W01");
        Assert.Contains(verdict, found.Message, StringComparison.Ordinal);
        Assert.Contains(("expected", "1.81 ohm"), found.Working!.Inputs);
    }

    // The leads add 0.2 ohm; at 45 C metric copper has 1.1 times as much (IEC 60228: 0.004 per kelvin), so 1.991 and 0.2 ohm are expected.
    [Theory]
    [InlineData("2.5101", true)]
    [InlineData("2.5102", false)]
    public void LeadsAndTheCablesTemperatureAreReckonedWith(string ohms, bool fine)
    {
        var job = Read("1").SayOf("Test house", HouseFacts.MeterLeads, "0.2").SayOf("Test house", HouseFacts.CableAtTest, "45")
            .Say("W01", RunFacts.FirstLoop, ohms);
        var outcome = job.Judge(Check, "W01");
        Assert.Equal(fine, outcome is Outcome.Fine);
        var working = (outcome as Outcome.Fine)?.Working ?? ((Outcome.Found)outcome).Working;
        Assert.Contains(("reckoned with", "cable at 45 C, leads 0.2 ohm"), working!.Inputs);
        Assert.Contains(("expected", "2.191 ohm"), working.Inputs);
    }

    [Fact]
    public void AReadingKeepsWhatWasSaidWhenItWasTaken()
    {
        var job = Read("1.81").SayOf("Test house", HouseFacts.MeterLeads, "0.5");
        job.Fine(Check, "W01");
        Assert.Null(job.Run("W01").FirstTest!.Value.Leads);
        Assert.Equal(new Resistance(0.5m), job.Say("W01", RunFacts.FirstLoop, "2.31").Run("W01").FirstTest!.Value.Leads);
        job.SayOf("Test house", HouseFacts.MeterLeads, "").Fine(Check, "W01");
        Assert.Null(job.Say("W01", RunFacts.FirstLoop, "1.81").Run("W01").FirstTest!.Value.Leads);
    }

    [Fact]
    public void ACableThatWasNotReadIsNotAPass() => Read("1.81").Forget("W01", RunFacts.FirstLoop).Lacks(Check, "W01", "first test, loop");

    [Fact]
    public void ARunOfUnknownLengthIsNotAPass() => Read("1.81").Forget("W01", RunFacts.TailAtPanel).Lacks(Check, "W01", "tail at panel");

    private static TestJob Read(string ohms) => Jobs.Walked("W01", Jobs.Metric())
        .SayOf("16/2", CableTypeFacts.Conductor, "1 mm2").SayOf("16/2", CableTypeFacts.Stranding, "solid").Say("W01", RunFacts.Cable, "16/2")
        .Legs("W01", ("48 m", CablePlace.InWall))
        .Say("W01", RunFacts.TailAtWindow, "1000 mm").Say("W01", RunFacts.TailAtPanel, "1000 mm").Say("W01", RunFacts.FirstLoop, ohms);
}

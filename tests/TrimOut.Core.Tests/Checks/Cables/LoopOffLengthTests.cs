using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

public class LoopOffLengthTests
{
    private static readonly LoopOffLength Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstLoop, "0.8"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.FirstLoop, "0.6"));

    // 50 m of 1 mm2 solid, one way: 2 x 50 x 0.0181 = 1.81 ohm at 20 C (IEC 60228). A meter of hundredths: 0.5 % and 2 1/2 steps, 0.03405 ohm; copper
    // 1.25 %, 0.02263 ohm; one leg of 48 m within 1 % and 80 mm, 0.02027 ohm: 0.07695 ohm either way.
    [Theory]
    [InlineData("1.8869")]
    [InlineData("1.7331")]
    public void AReadingWithinTheToleranceIsFine(string ohms) => Read(ohms).Fine(Check, "W01");

    [Theory]
    [InlineData("1.887", "That is 52.12 m of cable: a thinner one")]
    [InlineData("1.733", "That is 47.87 m of cable: it is shorted there")]
    public void AnotherReadingSaysWhatItMayBe(string ohms, string verdict)
    {
        var found = Read(ohms).Fault(Check, "W01");
        Assert.Contains(verdict, found.Message, StringComparison.Ordinal);
        Assert.Contains(("expected", "1.81 ohm"), found.Working!.Inputs);
    }

    // Of a meter of which nobody said what its last digit is, 10 % and 0.1 ohm are taken: 0.281 ohm.
    [Theory]
    [InlineData("2.091", true)]
    [InlineData("2.092", false)]
    public void WithoutAWordOfTheMeterTheBandIsWide(string ohms, bool fine) =>
        Assert.Equal(fine, Read("1.81").SayOf("Test house", HouseFacts.MeterStep, "").Say("W01", RunFacts.FirstLoop, ohms).Judge(Check, "W01") is Outcome.Fine);

    // Two and a half steps of a tenth are 0.25 ohm.
    [Fact]
    public void AMeterOfTenthsIsAllowedItsTenths() =>
        Read("1.81").SayOf("Test house", HouseFacts.MeterStep, "0.1").Say("W01", RunFacts.FirstLoop, "2.1").Fine(Check, "W01");

    // 4 m of 2.5 mm2 stranded have 0.064 ohm (IEC 60228), which a band of 0.1 ohm would not miss.
    [Fact]
    public void AShortRunThatReadsNothingIsACautionWhateverTheMeter()
    {
        var job = Jobs.Walked("W01", Jobs.Metric()).SayOf("16/2", CableTypeFacts.Conductor, "2.5 mm2").Say("W01", RunFacts.Cable, "16/2")
            .Legs("W01", ("2 m", CablePlace.InWall)).Say("W01", RunFacts.TailAtWindow, "1000 mm").Say("W01", RunFacts.TailAtPanel, "1000 mm")
            .SayOf("Test house", HouseFacts.MeterStep, "").Say("W01", RunFacts.FirstLoop, "0");
        Assert.Contains("Nothing is left for the cable", job.Fault(Check, "W01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatTheLoopDoesNotSeeIsTold() => Assert.Contains(("not seen", "a short in the last 2.12 m, a joint under 0.077 ohm"),
        Assert.IsType<Outcome.Fine>(Read("1.81").Judge(Check, "W01")).Working!.Inputs);

    [Theory]
    [InlineData("open")]
    [InlineData("0.9")]
    public void ACutAndAPlainShortAreAnotherChecks(string ohms) => Read(ohms).Silent(Check, "W01");

    // The leads add 0.2 ohm; at 45 C metric copper has 1.1 times as much (IEC 60228: 0.004 per kelvin), so 1.991 and 0.2 ohm are expected,
    // within 0.03596 of the meter, 0.02489 of the copper and 0.0223 of the leg: 0.08314 ohm.
    [Theory]
    [InlineData("2.2741", true)]
    [InlineData("2.2742", false)]
    public void LeadsAndTheCablesTemperatureAreReckonedWith(string ohms, bool fine)
    {
        var job = Read("1").SayOf("Test house", HouseFacts.MeterLeads, "0.2").SayOf("Test house", HouseFacts.CableAtTest, "45")
            .Say("W01", RunFacts.FirstLoop, ohms);
        var outcome = job.Judge(Check, "W01");
        Assert.Equal(fine, outcome is Outcome.Fine);
        var working = (outcome as Outcome.Fine)?.Working ?? ((Outcome.Found)outcome).Working;
        Assert.Contains(("worked out with", "cable at 45 C, leads 0.2 ohm"), working!.Inputs);
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

    [Theory]
    [InlineData(null, null, null)]
    [InlineData("0.2", null, "cable taken as 20 C, leads 0.2 ohm")]
    [InlineData(null, "35", "cable at 35 C, leads taken off")]
    [InlineData("0.2", "35", "cable at 35 C, leads 0.2 ohm")]
    public void WhatItIsReckonedWithIsSaidWhereSomethingWasSaid(string? leads, string? celsius, string? said)
    {
        var job = Read("1");
        if (leads is not null)
            job.SayOf("Test house", HouseFacts.MeterLeads, leads);
        if (celsius is not null)
            job.SayOf("Test house", HouseFacts.CableAtTest, celsius);
        var message = job.Say("W01", RunFacts.FirstLoop, "3").Fault(Check, "W01").Message;
        Assert.Equal(said is not null, message.Contains("cable ", StringComparison.Ordinal) && message.Contains("leads ", StringComparison.Ordinal));
        Assert.Contains(said ?? "", message, StringComparison.Ordinal);
    }

    // 4 m of 1.5 mm2 solid have 0.0968 ohm, 1 m 0.0242 ohm: under 0.03 ohm a meter may show the leads alone.
    [Theory]
    [InlineData("2 m", false)]
    [InlineData("1 m", true)]
    public void TheLeadsAloneAreReadOnlyWhereTheCableIsTooLittleToShow(string leg, bool fine)
    {
        var tail = fine ? "0" : "1000 mm";
        var job = Jobs.Walked("W01", Jobs.Metric()).SayOf("16/2", CableTypeFacts.Conductor, "1.5 mm2").SayOf("16/2", CableTypeFacts.Stranding, "solid")
            .Say("W01", RunFacts.Cable, "16/2").Legs("W01", (leg, CablePlace.InWall)).Say("W01", RunFacts.TailAtWindow, tail)
            .Say("W01", RunFacts.TailAtPanel, tail).SayOf("Test house", HouseFacts.MeterStep, "").SayOf("Test house", HouseFacts.MeterLeads, "0.2")
            .Say("W01", RunFacts.FirstLoop, "0.2");
        Assert.Equal(fine, job.Judge(Check, "W01") is Outcome.Fine);
    }

    private static TestJob Read(string ohms) => Jobs.Walked("W01", Jobs.Metric())
        .SayOf("16/2", CableTypeFacts.Conductor, "1 mm2").SayOf("16/2", CableTypeFacts.Stranding, "solid").Say("W01", RunFacts.Cable, "16/2")
        .Legs("W01", ("48 m", CablePlace.InWall))
        .Say("W01", RunFacts.TailAtWindow, "1000 mm").Say("W01", RunFacts.TailAtPanel, "1000 mm").Say("W01", RunFacts.FirstLoop, ohms);
}

using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class MainsTouchedTests
{
    private static readonly MainsTouched Check = new();

    public static Example Finds => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.MainsDistance, "0").Say("W01", RunFacts.MainsSheathed, "no"));

    public static Example Passes => new(() => Jobs.Roughed(), j => j.Say("W01", RunFacts.MainsDistance, "0").Say("W01", RunFacts.MainsSheathed, "yes"));

    // NFPA 70-2017, 725.136, from memory.
    [Fact]
    public void TouchingOpenMainsIsAStopThatSendsForTheElectrician()
    {
        var found = Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "0").Say("W01", RunFacts.MainsSheathed, "no").Fault(Check, "W01");
        Assert.Equal("The cable touches mains wiring that is not sheathed.", found.Message);
        Assert.Contains("electrician", found.Mend, StringComparison.Ordinal);
        Assert.Contains("The code in force governs.", found.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void ASixteenthAwayDoesNotTouch() =>
        Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "1/16\"").Say("W01", RunFacts.MainsSheathed, "no").Fine(Check, "W01");

    [Fact]
    public void MainsOfWhichNobodySaidWhetherItIsSheathedAreNotAPass() =>
        Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "0").Lacks(Check, "W01", "mains sheathed");

    [Fact]
    public void ADistanceThatNobodyMeasuredIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "from mains");
}

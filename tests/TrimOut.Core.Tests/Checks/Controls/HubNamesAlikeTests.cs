using CsCheck;
using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

public class HubNamesAlikeTests
{
    private static readonly HubNamesAlike Check = new();

    public static Example Finds => new(() => Named("Den left", "Attic"), j => j.Say("W02", UnitFacts.HubName, "Den lefft"));

    public static Example Passes => new(() => Named("Den left", "Attic"), j => j.Say("W02", UnitFacts.HubName, "Den right"));

    [Theory]
    [InlineData("Den left", "Den right")]
    [InlineData("Den 1", "Den 2")]
    [InlineData("Den 1", "Den 11")]
    [InlineData("Den left", "Den le")]
    [InlineData("Den W08A", "Den W08B")]
    [InlineData("Den 8", "Den 8a")]
    public void NamesThatNobodyMistakesAreFine(string first, string second) => Named(first, second).Fine(Check, "W01");

    [Theory]
    [InlineData("Den left", "Den lefft")]
    [InlineData("Den left", "Den-left")]
    [InlineData("Den left", "Den lift")]
    [InlineData("Ann left", "nn left")]
    [InlineData("Den 8 left", "Den 8 lefft")]
    public void NamesALetterOrAMarkApartAreACautionForBoth(string first, string second)
    {
        var job = Named(first, second);
        Assert.Equal($"It is called \"{first}\" at the hub, and W02 \"{second}\".", job.Fault(Check, "W01").Message);
        job.Fault(Check, "W02");
    }

    [Fact]
    public void TheSameNameIsTheOtherChecksToSay() => Named("Den left", "den left").Fine(Check, "W01");

    [Fact]
    public void AUnitWithoutANameHasNothingToCompare() => Jobs.Walked().Silent(Check, "W01");

    [Fact]
    public void SketchesFindWhatComparingAllWithAllFinds() => Gen.Char["ab1 "].Array[1, 6].Select(c => "x" + new string(c)).Array[2, 8].Sample(names =>
    {
        var job = new TestJob();
        for (var n = 0; n < names.Length; n++)
            job.Window($"W{n}").Say($"W{n}", UnitFacts.HubName, names[n]);
        foreach (var unit in job.House.Units)
        {
            var mine = unit.Item.Get(UnitFacts.HubName)!;
            var expected = job.House.Units.Any(o => o.Id != unit.Id && o.Item.Get(UnitFacts.HubName) is { } theirs &&
                !string.Equals(mine, theirs, StringComparison.OrdinalIgnoreCase) && PlainName.Of(mine).IsLike(PlainName.Of(theirs)));
            Assert.Equal(expected, job.Judge(Check, unit.Tag) is Outcome.Found);
        }
    }, iter: 60);

    private static TestJob Named(string first, string second) =>
        new TestJob().Window("W01").Window("W02").Say("W01", UnitFacts.HubName, first).Say("W02", UnitFacts.HubName, second);
}

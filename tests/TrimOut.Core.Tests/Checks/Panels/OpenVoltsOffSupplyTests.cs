using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class OpenVoltsOffSupplyTests
{
    private static readonly OpenVoltsOffSupply Check = new();

    public static Example Finds => new(() => Jobs.Walked(), j => j.Say("W01", RunFacts.OpenVolts, "16"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", RunFacts.OpenVolts, "12.4"));

    // A tenth of 12 V either way: common practice, no published source.
    [Theory]
    [InlineData("13.2")]
    [InlineData("10.8")]
    [InlineData("-12")]
    public void WithinATenthIsFine(string volts) => Read(volts).Fine(Check, "W01");

    [Theory]
    [InlineData("13.201", "another supply")]
    [InlineData("10.799", "another supply")]
    [InlineData("0", "No power comes")]
    public void OutsideItIsAStopThatSaysWhatItMayBe(string volts, string verdict) =>
        Assert.Contains(verdict, Read(volts).Fault(Check, "W01").Message, StringComparison.Ordinal);

    [Fact]
    public void ARunThatNobodyReadIsNotAPass() => Jobs.Walked().Lacks(Check, "W01", "open-circuit volts");

    [Theory]
    [InlineData("0.99", "No power comes")]
    [InlineData("1", "another supply")]
    public void UnderAVoltNoPowerComes(string volts, string verdict) =>
        Assert.Contains(verdict, Read(volts).Fault(Check, "W01").Message, StringComparison.Ordinal);

    private static TestJob Read(string volts) => Jobs.Walked().Say("W01", RunFacts.OpenVolts, volts);
}

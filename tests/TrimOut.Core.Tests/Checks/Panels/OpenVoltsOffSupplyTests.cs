using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class OpenVoltsOffSupplyTests
{
    private static readonly OpenVoltsOffSupply Check = new();

    public static Example Finds => new(Own, j => j.Say("W01", RunFacts.OpenVolts, "24"));

    public static Example Passes => new(Own, j => j.Say("W01", RunFacts.OpenVolts, "19.4"));

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

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Jobs.Walked().SayOf("Invented supply", PanelTypeFacts.Supply, "19");

    [Fact]
    public void TheWorkingTellsBothVoltages() => Assert.Equal("read 13.201 V, supply 12 V", Read("13.201").Fault(Check, "W01").Worked);
}

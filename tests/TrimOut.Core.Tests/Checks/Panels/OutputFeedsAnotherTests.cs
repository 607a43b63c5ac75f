using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class OutputFeedsAnotherTests
{
    private static readonly OutputFeedsAnother Check = new();

    public static Example Finds => new(() => Landed(), j => j.Say("W01", RunFacts.WentDead, "another window"));

    public static Example Passes => new(() => Landed(), j => j.Say("W01", RunFacts.WentDead, "this window"));

    [Fact]
    public void ItsOwnWindowIsFine() => Landed().Say("W01", RunFacts.WentDead, "this window").Fine(Check, "W01");

    [Theory]
    [InlineData("another window", "With the plug of P1 output 3 pulled another window went dead.")]
    [InlineData("no window", "With the plug of P1 output 3 pulled no window went dead.")]
    public void AnotherOneOrNoneIsAStop(string dead, string said) =>
        Assert.Equal(said, Landed().Say("W01", RunFacts.WentDead, dead).Fault(Check, "W01").Message);

    [Fact]
    public void WithoutAnOutputItIsStillSaid() => Assert.Equal("With the plug of its output pulled no window went dead.",
        Jobs.Walked().Say("W01", RunFacts.WentDead, "no window").Fault(Check, "W01").Message);

    [Fact]
    public void AnOutputThatNobodyProvedIsNotAPass() => Landed().Lacks(Check, "W01", "its output off");

    private static TestJob Landed() => Jobs.Walked().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, "3");
}

using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class JointsUnderPowerTests
{
    private static readonly JointsUnderPower Check = new();

    public static Example Finds => new(() => Hung(), j => j.SayOf("P1", PanelFacts.OffSeen, "it was on"));

    public static Example Passes => new(() => Hung(), j => j.SayOf("P1", PanelFacts.OffSeen, "meter read nothing").SayOf("P1", PanelFacts.OffBy, "The crew"));

    [Fact]
    public void APanelThatSomebodySwitchedOffAndReadDeadIsFine() =>
        Assert.IsType<Outcome.Fine>(Off("meter read nothing").SayOf("P1", PanelFacts.OffBy, "The crew").Of(Check, "P1"));

    [Theory]
    [InlineData("it was on", "Joints were made while P1 was on.")]
    [InlineData("not looked at", "P1 was switched off, and nobody saw that its outputs were dead.")]
    public void ALivePanelOrOneThatNobodyReadIsAStop(string seen, string said) => Assert.Equal(said, Off(seen).FaultOf(Check, "P1").Message);

    [Fact]
    public void APanelThatNobodyIsNamedForIsNotAPass() => Assert.Equal("switched off by", Off("meter read nothing").MissingOf(Check, "P1"));

    [Fact]
    public void APanelOfWhichNobodySaidIsNotAPass() => Assert.Equal("off before joints", Hung().MissingOf(Check, "P1"));

    private static TestJob Hung() => Jobs.Walked().WithPanel();

    private static TestJob Off(string seen) => Hung().SayOf("P1", PanelFacts.OffSeen, seen);
}

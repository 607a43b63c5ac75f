using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Safety;

public class EscapeStaysShutTests
{
    private static readonly EscapeStaysShut Check = new();

    public static Example Finds => new(() => Without("stays put"), j => j.Say("W01", WindowFacts.Escape, "yes"));

    public static Example Passes => new(() => Without("moved by hand"), j => j.Say("W01", WindowFacts.Escape, "yes"));

    [Theory]
    [InlineData("moved by hand")]
    [InlineData("opens")]
    public void WhatCanBeOpenedWithoutPowerIsFine(string without) => Without(without).Say("W01", WindowFacts.Escape, "yes").Fine(Check, "W01");

    [Fact]
    public void WhatNobodyCouldTellYetIsOpenAndNoPass() =>
        Without("stays put").Say("W01", WindowFacts.Escape, "not known yet").Lacks(Check, "W01", "escape window");

    [Fact]
    public void AWindowThatIsNoEscapeWindowIsFine() => Without("stays put").Say("W01", WindowFacts.Escape, "no").Fine(Check, "W01");

    [Fact]
    public void ABatteryOfItsOwnIsFine() => Without("stays put").Say("W01", WindowFacts.Escape, "yes").Say("W01", UnitFacts.Power, "battery")
        .Fine(Check, "W01");

    [Fact]
    public void WhatStaysShutIsAStop() => Assert.Equal("W01 is an escape window, and Roller stays where it is when the power fails.",
        Without("stays put").Say("W01", WindowFacts.Escape, "yes").Fault(Check, "W01").Message);

    [Fact]
    public void AWindowOfWhichNobodySaidIsNotAPass() => Without("stays put").Lacks(Check, "W01", "escape window");

    [Fact]
    public void AKindOfWhichNobodySaidIsNotAPass() =>
        Jobs.Walked().Say("W01", WindowFacts.Escape, "yes").Lacks(Check, "W01", "without power of Roller in the kit");

    private static TestJob Without(string power) => Jobs.Walked().SayOf("Roller", CoveringKindFacts.WithoutPower, power);
}

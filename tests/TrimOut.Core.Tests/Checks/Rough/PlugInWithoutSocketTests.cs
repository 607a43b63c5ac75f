using TrimOut.Core.Checks.Rough;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Rough;

public class PlugInWithoutSocketTests
{
    private static readonly PlugInWithoutSocket Check = new();

    public static Example Finds => new(() => PlugIn(), j => j.Say("W01", UnitFacts.Socket, "none"));

    public static Example Passes => new(() => PlugIn(), j => j.Say("W01", UnitFacts.Socket, "in reach"));

    [Fact]
    public void ASocketInReachIsFine() => PlugIn().Say("W01", UnitFacts.Socket, "in reach").Fine(Check, "W01");

    [Theory]
    [InlineData("none", "It is to have a plug-in supply, and there is no outlet.")]
    [InlineData("too far", "The outlet for its plug-in supply is too far: the cord would cross the wall.")]
    public void NoneOrOneThatIsTooFarIsAStop(string socket, string said) =>
        Assert.Equal(said, PlugIn().Say("W01", UnitFacts.Socket, socket).Fault(Check, "W01").Message);

    [Fact]
    public void ASocketThatNobodyLookedForIsNotAPass() => PlugIn().Lacks(Check, "W01", "outlet");

    [Fact]
    public void WhatAPanelFeedsNeedsNone() => Jobs.Walked().Silent(Check, "W01");

    private static TestJob PlugIn() => Jobs.Walked().Say("W01", UnitFacts.Power, "plug in");

    [Fact]
    public void BehindDrywallABatteryIsTheFirstWayOut()
    {
        var job = PlugIn().Say("W01", UnitFacts.Socket, "none");
        Assert.StartsWith("Ask the licensed electrician for an outlet", job.Fault(Check, "W01").Mend, StringComparison.Ordinal);
        Assert.StartsWith("Plan a battery", job.Mark("W01", "measured").Fault(Check, "W01").Mend, StringComparison.Ordinal);
    }
}

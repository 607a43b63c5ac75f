using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class MainsUnsignedTests
{
    private static readonly MainsUnsigned Check = new();

    public static Example Finds => new(() => Live(), j => j.SayOf("P1", PanelFacts.ConnectedBy, "Mains Bros"));

    public static Example Passes => new(() => Live(), j => j.SayOf("P1", PanelFacts.ConnectedBy, "Mains Bros").SayOf("P1", PanelFacts.Licence, "EL-1234"));

    [Fact]
    public void ANamedAndLicensedElectricianIsFine() =>
        Assert.IsType<Outcome.Fine>(Live().SayOf("P1", PanelFacts.ConnectedBy, "Mains Bros").SayOf("P1", PanelFacts.Licence, "EL-1234").Of(Check, "P1"));

    [Fact]
    public void ALivePanelThatNobodySignedForIsAStop() =>
        Assert.Equal("Volts were read on P1 and no name stands beside its mains connection.", Live().FaultOf(Check, "P1").Message);

    [Fact]
    public void ANameWithoutALicenceIsNotEnough() =>
        Assert.Equal("Volts were read on P1 and no license stands beside its mains connection.", Live().SayOf("P1", PanelFacts.ConnectedBy, "Mains Bros")
            .FaultOf(Check, "P1").Message);

    [Fact]
    public void ADeadPanelWithoutANameIsNotAPassYet() =>
        Assert.Equal("connected by", Jobs.Walked().WithPanel().MissingOf(Check, "P1"));

    [Fact]
    public void LoadedVoltsAloneMakeAPanelLive() => Assert.Equal("Volts were read on P1 and no name stands beside its mains connection.",
        Live().Say("W01", RunFacts.LoadedVolts, "11").Forget("W01", RunFacts.OpenVolts).FaultOf(Check, "P1").Message);

    [Fact]
    public void APanelWithARunThatNobodyReadIsNotLive() => Assert.Equal("connected by", Live().Forget("W01", RunFacts.OpenVolts).MissingOf(Check, "P1"));

    private static TestJob Live() =>
        Jobs.Walked().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, "1").Say("W01", RunFacts.OpenVolts, "12.1");
}

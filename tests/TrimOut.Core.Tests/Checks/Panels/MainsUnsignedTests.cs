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

    [Theory]
    [InlineData("Marlow family")]
    [InlineData("the owner")]
    [InlineData("Ida Marlow")]
    public void TheOwnerAndWhoeverOpensTheHouseAreNoElectricians(string by)
    {
        var job = Live().SayOf("", HouseFacts.Client, "Marlow family").SayOf("", HouseFacts.SiteContact, "Ida Marlow, 555-0134")
            .SayOf("P1", PanelFacts.ConnectedBy, by).SayOf("P1", PanelFacts.Licence, "EL-1234");
        Assert.Equal($"P1 was connected to mains by {by}, who stands in this job as somebody else than the licensed electrician.",
            job.FaultOf(Check, "P1").Message);
    }

    [Theory]
    [InlineData("applied for")]
    [InlineData("n/a")]
    public void ALicenceThatIsToComeIsNone(string licence) => Assert.StartsWith("Volts were read on P1 and no license",
        Live().SayOf("P1", PanelFacts.ConnectedBy, "Mains Bros").SayOf("P1", PanelFacts.Licence, licence).FaultOf(Check, "P1").Message,
        StringComparison.Ordinal);

    [Fact]
    public void OneElectricianHasOneLicence()
    {
        var job = Live().WithPanel("P2");
        foreach (var panel in (string[])["P1", "P2"])
            job.SayOf(panel, PanelFacts.ConnectedBy, "Mains Bros").SayOf(panel, PanelFacts.Licence, "EL-1234");
        Assert.IsType<Outcome.Fine>(job.Of(Check, "P1"));
        job.SayOf("P2", PanelFacts.Licence, "EL-1243");
        Assert.Equal("Mains Bros connected P1 with license EL-1234, and P2 with license EL-1243.", job.FaultOf(Check, "P1").Message);
        Assert.IsType<Outcome.Fine>(job.SayOf("P2", PanelFacts.ConnectedBy, "Volt Sisters").Of(Check, "P1"));
    }

    private static TestJob Live() =>
        Jobs.Walked().WithPanel().Say("W01", RunFacts.Panel, "P1").Say("W01", RunFacts.Output, "1").Say("W01", RunFacts.OpenVolts, "12.1");
}

using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class MotorOffSupplyTests
{
    private static readonly MotorOffSupply Check = new();

    public static Example Finds => new(Own, j => j.SayOf("Invented supply", PanelTypeFacts.Supply, "21"));

    public static Example Passes => new(Own, j => j.SayOf("Invented supply", PanelTypeFacts.Supply, "14.5"));

    // The generic roller is made for 12 V; a tenth of 13.333 V is 1.333 V.
    [Fact]
    public void ATenthApartIsFine() => Assert.IsType<Outcome.Fine>(Supply("13.333").Of(Check, "Roller"));

    [Fact]
    public void ALittleMoreIsAStop() =>
        Assert.Equal("Roller is made for 12 V; no panel of the house or its kit gives that, within a tenth.",
            Supply("13.334").FaultOf(Check, "Roller").Message);

    [Fact]
    public void BeforeAnyUnitIsThereEveryKindOfTheKitIsJudged() =>
        Assert.IsType<Outcome.Found>(new TestJob().SayOf("Invented supply", PanelTypeFacts.Supply, "24").Of(Check, "Wood blind"));

    [Fact]
    public void AKindThatHangsOnNoPanelSaysNothing() =>
        Assert.Empty(Check.Run(Supply("24").Say("W01", UnitFacts.Power, "battery").House));

    [Fact]
    public void AMotorThatLandsOnAPanelOfOtherVoltsIsAStop()
    {
        var job = TwoPanels().Say("W01", RunFacts.Panel, "P2");
        Assert.Equal("Roller is made for 12 V; P2 gives 24 V.", job.Fault(Check, "W01").Message);
        job.Say("W01", RunFacts.Panel, "P1").Fine(Check, "W01");
    }

    [Fact]
    public void WhereTheKitHasNoOtherPanelItIsToldOnceOfTheKindAndOfARunThatIsLanded()
    {
        var job = Supply("24").WithPanel();
        Assert.Equal("Roller", Assert.Single(Check.Run(job.House), r => r.Outcome is Outcome.Found).Subject.Get(CoveringKindFacts.Name));
        Assert.DoesNotContain(job.Report.About(job.Unit("W01")), f => f.Check.Id == Check.Info.Id);
        // What is found of the kind passes nowhere: no run is listed under the supply that nobody checked.
        Assert.DoesNotContain(job.Report.Unread, u => u.Check == Check.Info);
        job.Say("W01", RunFacts.Panel, "P1");
        Assert.Equal("Roller is made for 12 V; P1 gives 24 V.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void AHouseWithoutAPanelOfItsVoltsIsAStopBeforeItIsLanded()
    {
        var job = TwoPanels().SayOf("P1", PanelFacts.Type, "24 V box");
        Assert.Equal("Roller is made for 12 V; no panel of the house gives that, within a tenth.", job.Fault(Check, "W01").Message);
    }

    [Fact]
    public void MotorVoltsThatAreNotKnownAreNotAPass() => Assert.Equal("motor volts of Roller in the kit",
        Jobs.Walked().SayOf("Roller", CoveringKindFacts.MotorVolts, "").MissingOf(Check, "Roller"));

    [Fact]
    public void ASupplyThatIsNotKnownIsNotAPass() => Assert.Equal("supply of Invented supply in the kit", Supply("").MissingOf(Check, "Roller"));

    // A tenth of 20 V is 2 V, just.
    [Fact]
    public void JustATenthIsFine() =>
        Assert.IsType<Outcome.Fine>(Supply("20").SayOf("Roller", CoveringKindFacts.MotorVolts, "18").Of(Check, "Roller"));

    [Fact]
    public void AnyPanelOfTheHouseThatGivesItsVoltsWillDo() => TwoPanels().Fine(Check, "W01");

    [Fact]
    public void OneUnitOfAKindOnAPanelIsEnoughForTheKindToBeJudged()
    {
        var job = Supply("24").Window("W02").Say("W02", UnitFacts.Power, "battery");
        Assert.IsType<Outcome.Found>(job.Of(Check, "Roller"));
    }

    // What the kind is told is not told of each of its runs as well.
    [Fact]
    public void ARunThatIsNotLandedIsNotToldWhatItsKindIsTold() => Supply("24").WithPanel().Silent(Check, "W01");

    private static TestJob Supply(string volts) => Jobs.Walked().SayOf("Invented supply", PanelTypeFacts.Supply, volts);

    private static TestJob TwoPanels() => Jobs.Walked().WithPanel().Add(ItemKind.PanelType, "24 V box").SayOf("24 V box", PanelTypeFacts.Supply, "24")
        .WithPanel("P2").SayOf("P1", PanelFacts.Type, "Invented supply").SayOf("P2", PanelFacts.Type, "24 V box");

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own() => Jobs.Walked().SayOf("Roller", CoveringKindFacts.MotorVolts, "14");
}

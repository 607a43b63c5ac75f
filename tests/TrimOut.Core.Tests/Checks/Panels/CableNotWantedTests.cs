using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Panels;

public class CableNotWantedTests
{
    private static readonly CableNotWanted Check = new();

    public static Example Finds => new(() => Landed(), j => j.Say("W01", UnitFacts.Power, "battery"));

    public static Example Passes => new(() => Jobs.Walked(), j => j.Say("W01", UnitFacts.Power, "battery"));

    [Fact]
    public void AUnitOnAPanelIsNotAsked() => Assert.Empty(Check.Run(Landed().House));

    [Theory]
    [InlineData("battery")]
    [InlineData("plug-in")]
    public void ALandedCableOfAUnitThatIsFedOtherwiseIsFound(string power) =>
        Assert.Equal("W01 is to be fed otherwise than by a panel, and its cable is landed on P1 output 1.",
            Found(Landed().Say("W01", UnitFacts.Power, power)));

    [Fact]
    public void ACableThatWasOnlyPulledIsFound() =>
        Assert.Equal("W01 is to be fed otherwise than by a panel, and its cable lies in the wall.",
            Found(Jobs.Roughed().Say("W01", UnitFacts.Power, "battery")));

    [Fact]
    public void ALandedCableOfAWindowThatIsLeftOutIsFound() =>
        Assert.Equal("W01 is in a window that is left out, and its cable is landed on P1 output 1.",
            Found(Landed().Say("W01", WindowFacts.Covered, "no")));

    [Fact]
    public void ARemoteThatMovesAUnitOfAWindowThatIsLeftOutIsFound()
    {
        var job = Jobs.Walked().Add(ItemKind.Remote, "Hall remote");
        job.SayOf("Hall remote", RemoteFacts.Moves, "yes", job.Unit("W01").Id).Say("W01", WindowFacts.Covered, "no");
        Assert.Equal("W01 is in a window that is left out, and Hall remote is still to move it.", Found(job));
    }

    /// <summary>Its remote moves it no more, and a preset still has its position: that is what is to be cleared.</summary>
    [Fact]
    public void APresetThatStillHasItsPositionIsNamedItself()
    {
        var job = Jobs.Walked().Add(ItemKind.Remote, "Hall remote");
        job.Do(AddItems.Preset(job.House.Remotes[0], "Cooking")).SayOf("Cooking", PresetFacts.Position, "40", job.Unit("W01").Id)
            .Say("W01", WindowFacts.Covered, "no");
        Assert.Equal("W01 is in a window that is left out, and Cooking is still to move it.", Found(job));
    }

    /// <summary>It is live: its output is not free, and its panel knows it.</summary>
    [Theory]
    [InlineData("power", "battery")]
    [InlineData("covered", "no")]
    public void WhatIsLandedAndNotWantedIsKnownOfItsPanelAndCanBeCleared(string field, string value)
    {
        var job = Landed();
        Assert.Empty(job.House.Panels[0].NotWanted);
        var (run, fact) = (job.Unit("W01").Run!.Id, (Fact?)FactTable.Find(ItemKind.Unit, field) ?? FactTable.Find(ItemKind.Window, field)!);
        job.Say("W01", fact, value);
        Assert.Equal([(run, 1)], job.House.Panels[0].NotWanted.Select(n => (n.Run.Id, n.Output)));
        if (field == "power")
            Assert.True(SetLine.Read(job.House, "W01\toutput\t").Ok);
    }

    [Fact]
    public void AUnitOfAWindowThatIsLeftOutIsNotOnOrder()
    {
        var job = Jobs.Ordered().Say("W01", UnitFacts.OrderedOn, "2026-03-02");
        Assert.Empty(Check.Run(job.House));
        job.Say("W01", WindowFacts.Covered, "no");
        Assert.Equal("W01 is in a window that is left out, and its unit was ordered on 2026-03-02.", Found(job));
        job.Do(Core.Decisions.LeaveOut.TakeIn(job.House.FindTag("W01")!)).Say("W01", UnitFacts.BoxLabel, "W01").Say("W01", WindowFacts.Covered, "no");
        Assert.Equal("W01 is in a window that is left out, and the box of its unit is here; it was ordered on 2026-03-02.", Found(job));
    }

    [Fact]
    public void AnOrderThatWasCancelledIsNone() => Assert.DoesNotContain(Check.Run(Jobs.Ordered().Say("W01", UnitFacts.OrderedOn, "2026-03-02")
        .Forget("W01", UnitFacts.OrderedOn).Say("W01", WindowFacts.Covered, "no").House), r => r.Outcome is Outcome.Found);

    [Fact]
    public void ItsOutputIsNotFreeForAnother()
    {
        var job = Jobs.Roughed("W02", Landed()).Say("W02", RunFacts.Panel, "P1").Say("W02", RunFacts.Output, "1");
        var all = "P1 output 1 feeds W01, W02; the sheet allows 1.";
        Assert.Equal(all, job.Fault(new OutputShared(), "W02").Message);
        Assert.Equal(all, job.Say("W01", UnitFacts.Power, "battery").Fault(new OutputShared(), "W02").Message);
        Assert.Equal(all, job.Say("W01", UnitFacts.Power, "panel").Say("W01", WindowFacts.Covered, "no").Fault(new OutputShared(), "W02").Message);
    }

    private static string Found(TestJob job) => Check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().Single().Message.In(job.House);

    private static TestJob Landed() => Jobs.Roughed().WithPanel().Say("W01", RunFacts.Panel, "P1")
        .Say("W01", RunFacts.Output, "1");
}

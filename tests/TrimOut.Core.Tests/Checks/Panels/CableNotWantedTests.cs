using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
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

using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

public class RemoteAtAnotherHubTests
{
    private static readonly RemoteAtAnotherHub Check = new();

    public static Example Finds => new(() => TwoHubs("H1", "H1"), j => j.SayOf("R1", RemoteFacts.Hub, "H2"));

    public static Example Passes => new(() => TwoHubs("H2", "H2"), j => j.SayOf("R1", RemoteFacts.Hub, "H2"));

    [Fact]
    public void TheHubOfAllThatItMovesIsFine() => Assert.IsType<Outcome.Fine>(At("H1", "H1", "H1").Of(Check, "R1"));

    [Fact]
    public void ARemoteAtAnotherHubIsPairedWithTheHubOfItsUnits()
    {
        var found = At("H1", "H2", "H2").FaultOf(Check, "R1");
        Assert.Equal("R1 counts at H1, and it is to move W01, W02, paired with H2.", found.Message);
        Assert.Equal("Pair R1 with H2 and write that hub.", found.Mend);
        Assert.Equal("hub", found.Mends.Field);
    }

    [Fact]
    public void OneUnitAtAnotherHubIsWhatIsToBePaired()
    {
        var found = At("H1", "H1", "H2").FaultOf(Check, "R1");
        Assert.Equal("R1 counts at H1, and it is to move W02, paired with H2.", found.Message);
        Assert.Equal("Pair W02 with H1 too, or take what it can't reach off R1.", found.Mend);
    }

    [Fact]
    public void ARemoteWithoutAHubIsNotAPass() => Assert.Equal("hub", TwoHubs("H1", "H1").MissingOf(Check, "R1"));

    [Fact]
    public void UnitsWithoutAHubAreNotAPass() =>
        Assert.Equal("a unit that it moves, paired with a hub", At("H1", "", "").MissingOf(Check, "R1"));

    private static TestJob At(string remote, string first, string second) => TwoHubs(first, second).SayOf("R1", RemoteFacts.Hub, remote);

    private static TestJob TwoHubs(string first, string second)
    {
        var job = new TestJob().Window("W01").Window("W02").Add(ItemKind.Hub, "H1").Add(ItemKind.Hub, "H2").Add(ItemKind.Remote, "R1");
        foreach (var (tag, hub) in new[] { ("W01", first), ("W02", second) })
        {
            job.Do(TrimOut.Core.Decisions.Controls.Toggle(job.House.Remotes[0], job.Unit(tag)));
            if (hub.Length > 0)
                job.Say(tag, UnitFacts.Hub, hub);
        }
        return job;
    }
}

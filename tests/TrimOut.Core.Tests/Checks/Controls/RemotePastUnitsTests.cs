using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Controls;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Controls;

public class RemotePastUnitsTests
{
    private static readonly RemotePastUnits Check = new();

    public static Example Finds => new(() => Own(6), j => Move(j, "W20"));

    public static Example Passes => new(() => Own(5), j => Move(j, "W20"));

    // One remote moves up to ten units: common practice, no published source.
    [Fact]
    public void TenUnitsAreFine() => Assert.IsType<Outcome.Fine>(Moving(10).Of(Check, "R1"));

    [Fact]
    public void TheEleventhIsAStop() => Assert.Equal("R1 moves 11 units; it takes 10.", Moving(11).FaultOf(Check, "R1").Message);

    [Fact]
    public void AUnitThatWasLeftOutNoLongerCounts() => Assert.IsType<Outcome.Fine>(Moving(11).SayOf("W11", WindowFacts.Covered, "no").Of(Check, "R1"));

    [Fact]
    public void ARemoteOfUnknownTypeIsNotAPass() =>
        Assert.Equal("type", Moving(1).SayOf("R1", RemoteFacts.Type, "").MissingOf(Check, "R1"));

    private static TestJob Moving(int units)
    {
        var job = new TestJob().Add(ItemKind.Remote, "R1");
        return Enumerable.Range(1, units).Aggregate(job, (j, n) => Move(j, $"W{n:00}"));
    }

    private static TestJob Move(TestJob job, string tag)
    {
        job.Window(tag);
        return job.Do(TrimOut.Core.Decisions.Controls.Toggle(job.House.Remotes[0], job.Unit(tag)));
    }

    // The examples have a kit of their own, so that the pages of docs/checks together show no set of values.
    private static TestJob Own(int units) => Moving(units).SayOf("Handheld", RemoteTypeFacts.Units, "6");
}

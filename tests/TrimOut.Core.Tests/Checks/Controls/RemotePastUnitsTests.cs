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
        foreach (var n in Enumerable.Range(1, units))
            job.Window($"W{n:00}").Do(TrimOut.Core.Decisions.Controls.Toggle(job.House.Remotes[0], job.Unit($"W{n:00}")));
        return job;
    }
}

using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Cables;

/// <summary>A run that is said to branch off what has no cable is a run of its own: nothing that is wrong with it goes unsaid.</summary>
public class BranchesOffNothingTests
{
    private static readonly string[] Stops = ["run-past-kit-table", "volts-short-at-unit"];

    public static TheoryData<string> Ways => ["itself", "removed", "battery", "left out"];

    [Theory]
    [MemberData(nameof(Ways))]
    public void ItIsJudgedAsARunOfItsOwn(string way)
    {
        var job = Jobs.Roughed("W02", Jobs.Roughed().WithPanel()).Legs("W02", ("900 ft", CablePlace.InWall))
            .Say("W02", RunFacts.BranchesOff, way == "itself" ? "W02" : "W01");
        _ = way switch
        {
            "removed" => job.Do(RemoveItems.Remove(job.House, job.Unit("W01").Window.Item)),
            "battery" => job.Say("W01", UnitFacts.Power, "battery"),
            "left out" => job.Say("W01", WindowFacts.Covered, "no"),
            _ => job,
        };
        var found = job.Report.Findings.Where(f => Stops.Contains(f.Check.Id) && f.Subject.Under == job.Unit("W02").Id);
        Assert.Equal(Stops, found.Select(f => f.Check.Id).Order());
    }
}

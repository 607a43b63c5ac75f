using TrimOut.Core.Checks;
using TrimOut.Core.Houses;

namespace TrimOut.Tests.SampleJobs;

public class RidgeHouseTests
{
    private readonly SampleJob _ridge = SampleJob.Open("ridge-house");

    /// <summary>What only the merge of two laptops' copies can bring about; the house file's tests make these.</summary>
    private static readonly string[] OnlyByMerge = ["values-disagree", "removed-while-worked-on", "tag-twice", "panel-name-twice"];

    /// <summary>What comes with pairing, limits and a wall that was finished otherwise; canal house has one of each.</summary>
    private static readonly string[] InCanalHouse = ["gap-between-units-too-large", "centre-support-left-out", "remote-at-another-hub", "plate-too-small",
        "preset-off-remote", "schedule-off-sun", "overlap-past-corner", "bar-in-glass", "plug-in-without-socket",
        "changed-since-order"];

    /// <summary>What the other samples have in what was taken back, or nobody in them typed what it needs (<see cref="EveryMessageTests"/>).</summary>
    private static readonly string[] NotInIt = ["claim-open", "latitude-off-zone", "longitude-off-zone", "open-bar-above-stack", "order-too-late",
        "ordered-without-size"];

    [Fact]
    public void EveryOtherCheckFindsAMistakeInIt() => Assert.Equal(
        [.. OnlyByMerge.Concat(InCanalHouse).Concat(NotInIt).Order(StringComparer.Ordinal)],
        AllChecks.All.Select(c => c.Info.Id).Except(_ridge.Report.Findings.Select(f => f.Check.Id)).Order(StringComparer.Ordinal));

    [Fact]
    public void CanalHouseHasTheOthers() =>
        Assert.Empty(InCanalHouse.Except(SampleJob.Open("canal-house").Report.Findings.Select(f => f.Check.Id)));

    [Fact]
    public void OneOfItsCrewWorksInMillimetres()
    {
        string[] Typed(string who) => [.. _ridge.Log.Changes.Where(c => c.By == who && c.What.EndsWith(" mm", StringComparison.Ordinal)).Select(c => c.What)];
        Assert.Contains("W08: Overlap each side: 12 mm", Typed("Bo"));
        Assert.Empty(Typed("Ash"));
    }

    [Fact]
    public void ItsReadmeTellsHowEachMistakeCameAbout()
    {
        var readme = File.ReadAllText(_ridge.In("README.md"));
        Assert.All(_ridge.Report.Findings.Select(f => f.Check.Id).Distinct(), id => Assert.Contains($"`{id}`", readme, StringComparison.Ordinal));
    }

    [Fact]
    public void ItHasTheShapesOfARealHouse()
    {
        var house = _ridge.House;
        Assert.Equal(17, house.Windows.Length);
        Assert.Equal(["SE", "S", "SW"], new[] { "W01", "W02", "W03" }.Select(t => house.FindTag(t)!.Show(Core.Facts.WindowFacts.Facing)));
        Assert.Equal(Core.Facts.Reach.Scaffold, house.FindTag("W07")!.Reach);
        Assert.Equal([3, 2], new[] { "W04", "W06" }.Select(t => house.FindTag(t)!.Units.Length));
        Assert.Equal("Frosted glass high in the wall; the owner wants its light.", house.FindTag("W10")!.Show(Core.Facts.WindowFacts.NotCoveredBecause));
        Assert.Equal(["Roller", "Cellular", "Wood blind"], house.Units.Select(u => u.Kind!.Name).Distinct());
    }
}

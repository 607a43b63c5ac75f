using TrimOut.Core.Checks;
using TrimOut.Core.Houses;

namespace TrimOut.Tests.SampleJobs;

public class RidgeHouseTests
{
    private readonly SampleJob _ridge = SampleJob.Open("ridge-house");

    /// <summary>What only the merge of two laptops' copies can bring about; the house file's tests make these.</summary>
    private static readonly string[] OnlyByMerge = ["values-disagree", "removed-while-worked-on", "tag-twice"];

    /// <summary>No outside mount, no door, and a bay that nobody has measured; and what its story has no mistake of: their own tests show these.</summary>
    private static readonly string[] NotInThisHouse = ["stack-in-the-way", "head-room-short", "corner-clash", "preset-off-remote", "position-twice",
        "finished-off-rough", "overlap-short", "overlap-past-corner", "centre-support-left-out", "setback-past-reveal", "plumb-width-short", "serial-twice",
        "plate-too-small", "bar-in-glass"];

    /// <summary>What nobody asked when this house was framed; their own tests and the true house show these.</summary>
    private static readonly string[] AskedLater =
        ["escape-stays-shut", "old-paint-untested", "conductors-alike", "fire-stop-open", "no-spare-cable", "cord-within-reach", "breaker-overloaded",
            "openings-off-count", "past-what-is-made", "plug-in-without-socket", "joint-on-the-way", "conductor-touches-building", "delivered-finish-off",
            "delivered-lead-off", "fixed-into-board-alone", "hung-out-of-level", "joints-under-power", "output-feeds-another"];

    /// <summary>
    /// Readings and loads at the panel, which the guest wing passed; and units side by side that are too wide together leave no strip of light.
    /// </summary>
    private static readonly string[] Passed =
        ["gap-between-units-too-large", "output-overloaded-together", "loop-off-length", "polarity-swapped", "open-volts-off-supply", "loaded-volts-low",
            "output-overloaded", "panel-overloaded", "panel-past-class-two", "step-off-units", "remote-at-another-hub",
            "step-passed-over"];

    /// <summary>Wiring of which this house has no mistake; their own tests and the true house show these.</summary>
    private static readonly string[] SoundWiring =
        ["label-off-unit", "leg-place-off-way", "no-box-long-enough", "motor-off-supply", "mains-touched", "panel-tail-short", "tail-longer-than-left",
            "loop-open-or-shorted", "conductors-not-apart", "loop-test-left-out", "live-before-connected", "loaded-above-open", "loaded-under-least",
            "sheet-contradicts-itself"];

    [Fact]
    public void EveryOtherCheckFindsAMistakeInIt() =>
        Assert.Empty(AllChecks.All.Select(c => c.Info.Id).Except(_ridge.Report.Findings.Select(f => f.Check.Id)).Except(OnlyByMerge)
            .Except(NotInThisHouse).Except(AskedLater).Except(Passed).Except(SoundWiring));

    [Fact]
    public void WhatIsLeftPassed() => Assert.All(Passed, id =>
    {
        var outcomes = AllChecks.Find(id)!.Run(_ridge.House).Select(r => r.Outcome).ToList();
        Assert.Contains(outcomes, o => o is Outcome.Fine);
        Assert.DoesNotContain(outcomes, o => o is Outcome.Found);
    });

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

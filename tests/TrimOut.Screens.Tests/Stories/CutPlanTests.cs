using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Screens.Cables;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

public class CutPlanTests
{
    private readonly List<Action> _waiting = [];

    [Fact]
    public void CutsArePlannedBesideTheKeysAndTheStatusLineSaysHowFarItIs()
    {
        var shell = AtCables();
        shell.Press("p");
        Assert.IsType<CablesScreen>(shell.Screen);
        shell.Press("down");
        Assert.StartsWith("Planning the cuts", shell.Doing, StringComparison.Ordinal);
        Finish();
        Assert.Matches(@"^Planning the cuts: \d of \d, ", shell.Doing);
        shell.Tick();
        Assert.IsType<CutPlanScreen>(shell.Screen);
    }

    [Fact]
    public void TheScreenShowsThePlanOfThePapers()
    {
        var shell = AtCables();
        Planned(shell);
        var screen = (CutPlanScreen)shell.Screen;
        var papers = CutPlans.Of(shell.Context.House);
        Assert.NotEmpty(papers);
        Assert.Equal(Said(papers), Said(screen.Plans));

        static IEnumerable<string?> Said(IEnumerable<PlannedCable> plans) =>
            plans.Select(p => p.Plan is not { } plan
                ? "none"
                : plan.Ok
                ? plan.Value.Says(DisplayUnits.Inches) + string.Join('|', plan.Value.Boxes.SelectMany(b => b.Cuts))
                : plan.Reason);
    }

    [Fact]
    public void APlanOfAHouseThatWasChangedSinceIsNotShownUntilItIsMadeAnew()
    {
        var shell = AtCables();
        Planned(shell);
        Assert.DoesNotContain("plans them again", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
        shell.Press("u");
        shell.Press("u");
        Assert.Contains("plans them again", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
        Planned(shell);
        Assert.DoesNotContain("plans them again", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
        shell.Press("esc");
        Assert.IsType<CablesScreen>(shell.Screen);
    }

    [Fact]
    public void EscStopsThePlanning()
    {
        var shell = AtCables();
        shell.Press("p");
        shell.Press("esc");
        Finish();
        shell.Tick();
        Assert.IsType<CablesScreen>(shell.Screen);
        Assert.Null(shell.Doing);
    }

    private void Planned(ShellState shell)
    {
        shell.Press("p");
        Finish();
        shell.Tick();
    }

    private ShellState AtCables()
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03");
        foreach (var (tag, length) in new[] { ("W01", "61 ft"), ("W02", "92 ft"), ("W03", "33 ft") })
            job.Say(tag, RunFacts.Cable, "16/2").Legs(tag, (length, CablePlace.InWall)).Say(tag, RunFacts.TailAtWindow, "48 in")
                .Say(tag, RunFacts.TailAtPanel, "60 in");
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe, beside: _waiting.Add);
        shell.Press("4");
        return shell;
    }

    private void Finish()
    {
        foreach (var work in _waiting)
            work();
        _waiting.Clear();
    }
}

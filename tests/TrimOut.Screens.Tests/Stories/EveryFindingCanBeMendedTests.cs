using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Tests.Checks;
using TrimOut.Screens.Controls;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Walk;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>From where a finding is told one key leads to the field that mends it, and the next key types there.</summary>
public class EveryFindingCanBeMendedTests
{
    public static TheoryData<string> Checks() => [.. AllChecks.All.Select(c => c.Info.Id)];

    [Theory]
    [MemberData(nameof(Checks))]
    public void EnterOnTheListLeadsToAFieldThatCanBeTyped(string id)
    {
        var job = Example.Finding(AllChecks.All.Single(c => c.Info.Id == id)).Play().Job;
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe);
        shell.Press("6");
        var found = PunchRows.Of((PunchScreen)shell.Screen, shell.Context).Index().Where(r => r.Item.Finding?.Check.Id == id).ToList();
        Assert.NotEmpty(found);
        foreach (var (at, row) in found)
        {
            shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe);
            shell.Press("6");
            for (var down = 0; down < at; down++)
                shell.Press("down");
            shell.Press("enter");
            AssertCanBeMended(shell, row.Finding!);
        }
    }

    [Theory]
    [InlineData("preset-off-remote")]
    [InlineData("unit-off-room-remote")]
    public void TheControlsHaveAKeyForWhatTheyTell(string id)
    {
        var job = Example.Finding(AllChecks.All.Single(c => c.Info.Id == id)).Play().Job;
        var finding = job.Report.Findings.First(f => f.Check.Id == id);
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe);
        shell.Press("5");
        var remote = job.House.FindRemote(finding.Found.Mends.Item)?.Id ?? job.House.Find(finding.Found.Mends.Item)!.Under;
        while (((ControlsScreen)shell.Screen).Remote(shell.Context)!.Id != remote)
            shell.Press("right");
        while (job.House.FindUnit(finding.Subject.Id) is { } unit && ((ControlsScreen)shell.Screen).Unit(shell.Context)!.Id != unit.Id)
            shell.Press("down");
        Assert.Contains(finding.Found.Message.In(job.House)[..20], shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        shell.Press("f");
        AssertCanBeMended(shell, finding);
    }

    /// <summary>The field is open, or under the cursor of a screen of which one key changes it.</summary>
    private static void AssertCanBeMended(ShellState shell, Finding finding)
    {
        if (shell.Typing is not null)
            return;
        var (house, mends) = (shell.Context.House, finding.Found.Mends);
        var field = $"{mends.Item}/{mends.Field}";
        var (key, under) = shell.Screen switch
        {
            SheetScreen sheet => ("enter", sheet.Current?.Place),
            WalkScreen walk => (walk.Subject(shell.Context)!.MarkOf(walk.Step(shell.Context)!) is null ? "space" : "delete",
                $"{walk.SubjectId}/{walk.Step(shell.Context)?.Field}"),
            ControlsScreen controls when house.Find(mends.Item)!.Kind == ItemKind.Preset =>
                ("%", $"{mends.Item}/{PresetFacts.Position.Field(controls.Unit(shell.Context)!.Id)}"),
            ControlsScreen controls => ("space", $"{controls.Remote(shell.Context)!.Id}/{RemoteFacts.Moves.Field(controls.Unit(shell.Context)!.Id)}"),
            _ => ("", null),
        };
        Assert.Equal(field, under);
        var before = shell.Context.Log.Changes.Count;
        shell.Press(key);
        Assert.True(shell.Typing is not null || shell.Context.Log.Changes.Count > before, $"{finding.Check.Id}: {key} does nothing at {mends.Field}.");
    }
}

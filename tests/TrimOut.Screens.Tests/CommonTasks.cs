using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>The ten commonest tasks, done by their keys: docs/keys.md counts them from here, and each must do what it says.</summary>
internal sealed record CommonTask(string Name, string From, string[] Way, string[] Keys, Func<ShellState, bool> Done)
{
    /// <summary>Marks what is typed as data, which is not counted as keystrokes.</summary>
    public const char Data = '=';

    public static IReadOnlyList<CommonTask> All { get; } =
    [
        new("Mark this step and go to the same step of the next unit", "Walk", ["2", "]", "]"], ["x"], s => Marked(s, "W01", "cable-found")),
        new("Add a window like the one before", "Job sheet", [], ["n", "enter"], s => s.Context.House.FindTag("W04") is { RoughWidth: not null }),
        new("Go to the field that fixes the unit's worst finding", "Job sheet", [], ["f"], s => s.Screen is SheetScreen { Current: not null }),
        new("Fill in the next missing detail", "A unit", ["enter"], ["e", "enter", "=w", "enter"], s => s.Context.LastSaved is not null),
        new("Jump to a unit by its tag", "Job sheet", [], ["g", "=W03", "enter"], s => s.Screen is JobSheetScreen j && j.Current(s.Context)?.Tag == "W03"),
        new("Land a cable by number", "Panels", ["3", "end"], ["t", "=P1 4", "enter"], s => s.Context.House.Panels[0].RunAt(4) is not null),
        new("Let a remote move every unit of its room", "Controls", ["5"], ["R"], s => s.Context.House.Remotes[0].Units.Any()),
        new("Waive a finding", "Punch list", ["6"], ["a", "=seen on site", "enter", "=TO", "enter"], s => s.Context.House.Waivers.Length == 1),
        new("Take the last change back", "Any screen", [], ["u", "u"], s => s.Context.RedoNext is not null),
        new("Write the owner's binder", "Any screen", [], ["7", "w"], s => s.Draw(80, 24).ToText().Contains("Written:", StringComparison.Ordinal)),
    ];

    /// <summary>Keys pressed, besides the data itself.</summary>
    public int Strokes => Keys.Count(k => k[0] != Data);

    /// <summary>Does the task on a small house; the house with what it did.</summary>
    public ShellState Do()
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03", "Study").Pulled("W01").Say("W01", UnitFacts.BoxLabel, "W09")
            .Say("W03", WindowFacts.RoughWidth, "36").Say("W03", WindowFacts.RoughHeight, "60")
            .Add(ItemKind.Panel, "P1").Add(ItemKind.Remote, "Kitchen").SayOf("Kitchen", RemoteFacts.Room, "Kitchen");
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe);
        foreach (var key in Way.Concat(Keys))
        {
            if (key[0] == Data && key.Length > 1)
                shell.TextChanged(key[1..]);
            else
                shell.Press(key);
        }
        return shell;
    }

    private static bool Marked(ShellState shell, string tag, string step) =>
        shell.Context.House.Units.Single(u => u.Tag == tag).MarkOf(StepList.Find(step)!) is not null;
}

public class CommonTaskTests
{
    public static TheoryData<string> Names() => [.. CommonTask.All.Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void EachTaskIsDoneByItsKeys(string name)
    {
        var task = CommonTask.All.Single(t => t.Name == name);
        Assert.True(task.Done(task.Do()), name);
    }
}

using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>Every key of every screen is pressed, and what is said then names only keys that there are where it stands.</summary>
public partial class KeysInMessagesTests
{
    /// <summary>The ways to the screens from the job sheet, in an empty house and in a house with some of everything.</summary>
    private static readonly string[][] Ways =
    [
        [], ["enter"], ["2"], ["2", "]"], ["3"], ["4"], ["4", "p"], ["5"], ["6"], ["6", "m"], ["7"], ["7", "enter"], ["8"], ["9"], ["9", "enter"], ["0"], ["r"],
        ["P"], ["="], ["?"],
    ];

    private static readonly ConcurrentDictionary<(string House, string Way), List<(string Stroke, string On, string Said, IReadOnlySet<string> Keys)>>
        Pressed = new();

    public static TheoryData<string, string> Screens()
    {
        var all = new TheoryData<string, string>();
        foreach (var house in (string[])["empty", "some"])
        {
            foreach (var way in Ways)
                all.Add(house, string.Join(' ', way));
        }
        return all;
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public void WhatIsSaidNamesKeysThatThereAre(string house, string way)
    {
        foreach (var (stroke, on, said, keys) in Pressed.GetOrAdd((house, way), _ => Press(house, way)))
        {
            if (Dead(said, keys) is [var key, ..])
                Assert.Fail($"On {on} ({house}: {way} {stroke}) {key} does nothing, and it says: {said}");
        }
    }

    /// <summary>Were no sentence read that names a key, the test above would hold all the same.</summary>
    [Fact]
    public void SentencesThatNameKeysAreReached()
    {
        var named = from screen in Screens()
                    from pressed in Pressed.GetOrAdd(((string)screen[0], (string)screen[1]), s => Press(s.House, s.Way))
                    where Named(pressed.Said).Count > 0
                    select pressed.Said;
        var said = named.Distinct().ToList();
        Assert.True(said.Count >= 20, $"Only {said.Count} sentences that name a key were read:\n{string.Join('\n', said)}");
        Assert.Contains(said, s => s.Contains("There is no room yet. n adds one.", StringComparison.Ordinal));
    }

    [Fact]
    public void AKeyThatDoesNothingThereIsFound()
    {
        Assert.Equal(["q"], Dead("There is no room yet. q adds one.", new HashSet<string> { "n", "enter" }));
        Assert.Empty(Dead("There is no room yet. n adds one.", new HashSet<string> { "n", "enter" }));
    }

    [Fact]
    public void KeysAreSeenInSentences()
    {
        Assert.Equal(["n", "N"], Named("There is no remote yet. n adds one, N adds a hub."));
        Assert.Equal(["enter", "delete"], Named("It has a value. Enter edits it, Del takes the waiver back."));
        Assert.Equal(["space"], Named("That is all. Space marks it done."));
        Assert.Empty(Named("A dog walks. That is a mark, and it shows. r on the job sheet has the rooms; M there merges them."));
    }

    private static ShellState At(string house, string way)
    {
        var job = new TestJob();
        if (house != "empty")
            job.Window("W01");
        if (house == "some")
        {
            job.Window("W02").Window("W03", "Bedroom").Add(ItemKind.Panel, "P1").Add(ItemKind.Hub, "Hub").Add(ItemKind.Remote, "R1").Add(ItemKind.Box, "A")
                .Say("W01", RunFacts.Cable, "16/2").Say("W01", RunFacts.FirstLoop, "0.4").Say("W01", UnitFacts.BoxLabel, "W02");
        }
        var clock = new FakeTimeProvider();
        var shell = new ShellState(new TestDesk(clock), job.Scribe);
        foreach (var key in way.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            shell.Press(key);
            clock.Advance(TimeSpan.FromSeconds(2));
        }
        shell.Draw(400, 60);
        return shell;
    }

    private static List<(string Stroke, string On, string Said, IReadOnlySet<string> Keys)> Press(string house, string way)
    {
        var all = new List<(string, string, string, IReadOnlySet<string>)>();
        foreach (var stroke in At(house, way).Screen.Keys.SelectMany(k => k.Strokes).Where(s => !Moves.Strokes.Contains(s)))
        {
            var shell = At(house, way);
            var before = Foot(shell);
            shell.Press(stroke);
            var said = Foot(shell);
            if (said == before)
                continue;
            all.Add((stroke, shell.Screen.Title, said, shell.Typing is not null
                ? new HashSet<string> { "enter", "esc", "tab", "up", "down", "f5", "f3" }
                : shell.Actions.SelectMany(a => a.Action.Strokes).Append(stroke).Append("y").ToHashSet()));
        }
        return all;
    }

    private static List<string> Dead(string said, IReadOnlySet<string> keys) => Named(said).FindAll(key => !keys.Contains(key));

    /// <summary>The lines at the foot, above the names of the keys.</summary>
    private static string Foot(ShellState shell)
    {
        var lines = shell.Draw(400, 60).ToText().Split('\n');
        return string.Join(' ', lines[^4..^1].Select(l => l.Trim()));
    }

    private static List<string> Named(string said) => [.. Key().Matches(said).Where(m => m.Groups["there"].Length == 0)
        .Select(m => m.Groups["key"].Value is { Length: 1 } one ? one
            : m.Groups["key"].Value switch { "Del" => "delete", var name => name.ToLowerInvariant() })];

    [GeneratedRegex(@"(?<![\w'@{/-])(?<key>[b-zB-HJ-Z%]|Enter|Space|Esc|Del|Tab|F\d) (?<there>there )?"
        + @"(adds|counts|keeps|takes|opens|brings|merges|goes|shows|lists|marks|walks|does|undoes|removes|lands|begins|"
        + @"fixes|edits|asks|writes|leaves|closes|says|types|saves|plans|names|chooses|changes)\b")]
    private static partial Regex Key();
}

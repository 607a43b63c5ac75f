using System.Text.RegularExpressions;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Walk;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>
/// A value that nobody checked is changed: whatever reads otherwise on a screen then was worked out with it, and has its mark. So no list says which
/// figures come from a sheet.
/// </summary>
public class SheetMarksOnScreensTests
{
    private static readonly Dictionary<string, string[]> Ways = new()
    {
        ["job sheet"] = [],
        ["rooms"] = ["r"],
        ["unit"] = ["enter"],
        ["panels"] = ["3"],
        ["a run on a panel"] = ["3", "down"],
        ["cables"] = ["4"],
        ["controls"] = ["5"],
        ["what-if"] = ["="],
        ["figures"] = ["y"],
        ["figures of a panel"] = ["3", "y"],
    };

    private static readonly string[] Walked =
        [.. StepList.All.Where(s => s.Subject == ItemKind.Unit && StepCue.Of(s) is not null).Select(s => s.Id), "spliced"];

    [Fact]
    public void WhatAnUncheckedValueDecidesHasItsMark()
    {
        var job = FilledHouse.Of(2);
        var (silent, decided) = (new List<string>(), 0);
        foreach (var part in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed).ToList())
        {
            foreach (var fact in SheetValues.Of(part).Where(f => part.Latest(f)?.Stored is not null))
            {
                var seen = OtherValues.Of(job.House, part, fact).Take(2).Select(o => Seen(job, part, fact, o)).ToList();
                var alike = seen[0].Findings.Intersect(seen[1].Findings).ToList();
                foreach (var (one, other) in seen[0].Screens.Zip(seen[1].Screens))
                {
                    var differing = one.Texts.Except(other.Texts).Select(t => (Text: t, On: one.Texts))
                        .Concat(other.Texts.Except(one.Texts).Select(t => (Text: t, On: other.Texts)))
                        .Where(d => !Counts(d.Text) && !Names(d.Text) && !BetweenSeverities.Split(d.Text).All(t => IsOf(t, alike))).ToList();
                    decided += differing.Count;
                    silent.AddRange(differing
                        .Where(d => !HasMark(d.Text, d.On) && !IsNamed(fact, d.On)).Select(d => $"{one.Screen}: {part.Kind} {fact.Name}: {d.Text}"));
                }
            }
        }
        Assert.True(silent.Count == 0, $"{silent.Count} of {decided}\n{string.Join('\n', silent.Take(60))}");
        Assert.InRange(decided, 500, int.MaxValue);
    }

    [Fact]
    public void WhereEverythingWasCheckedThereIsNoMark()
    {
        var job = FilledHouse.Of(2);
        job.Do(job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed)
            .SelectMany(i => SheetValues.NotHeldIn(i).Select(f => (Part: i, Fact: f)))
            .Aggregate(new Draft("all checked"), (d, v) => d.PutStored(v.Part.Id, Companion.Checked(v.Fact.Name), SheetMark.For(v.Part))));
        Assert.All(Screens(new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe)), s =>
            Assert.DoesNotContain(s.Texts, t => t.Contains(UncheckedValues.Mark, StringComparison.Ordinal)));
    }

    /// <summary>A line of a text that goes over several has the mark at the end of it.</summary>
    private static bool HasMark(string text, IEnumerable<string> on) => text.Contains('?', StringComparison.Ordinal)
        || text.Contains("nobody checked", StringComparison.Ordinal)
        || text.Contains("not checked against", StringComparison.Ordinal)
        || text.Contains("only by unchecked values", StringComparison.Ordinal)
        || IsOf(text, on.Where(whole => whole.Contains('?', StringComparison.Ordinal)));

    /// <summary>Inputs of a figure have no mark of their own: below them stands which of them nobody checked.</summary>
    private static bool IsNamed(Fact fact, IEnumerable<string> on) => on.Any(t =>
        t.Contains("not checked by anyone: ", StringComparison.Ordinal) && t.Contains(fact.Label, StringComparison.Ordinal));

    private static bool IsOf(string text, IEnumerable<string> wholes) =>
        wholes.Any(w => w.Contains(text.TrimEnd(TextWidth.Cut, ' '), StringComparison.Ordinal));

    /// <summary>
    /// What names a figure or numbers an axis: the figure beside it has the mark, and so has the sentence that says how long it may be.
    /// </summary>
    private static bool Names(string text) => AllChecks.Find(text) is not null || text is "Raised stack" or "Roll, raised" || Axis.IsMatch(text);

    private static readonly Regex BetweenSeverities = new(" (?:STOP|CAUTION|note) ", RegexOptions.None, TimeSpan.FromSeconds(1));

    private static readonly Regex Axis = new(@"^\d+(\.\d+)? (V|ft)$", RegexOptions.None, TimeSpan.FromSeconds(1));

    /// <summary>What counts findings and what waits, and how bad one is: each is marked where it is told. What is told either way may have no room.</summary>
    private static bool Counts(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(w => w is "STOP" or "CAUTION" or "note" or "stops" or "open," || !w.Any(char.IsLetter));

    private static (List<(string Screen, List<string> Texts)> Screens, List<string> Findings) Seen(TestJob job, Item part, Fact fact, string value)
    {
        var isSo = value == part.Latest(fact)?.Stored && part.Latest(Companion.Checked(fact.Name))?.Stored is null;
        if (!isSo)
            job.Do(new Draft("another value").PutStored(part.Id, fact.Name, value).PutStored(part.Id, Companion.Checked(fact.Name), null));
        var shell = new ShellState(new TestDesk(new FakeTimeProvider(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero))), job.Scribe);
        var screens = Screens(shell);
        if (!isSo)
            job.Scribe.Undo();
        return (screens, [.. shell.Context.Report.Findings.Select(f => f.Found.Message.In(shell.Context.House))]);
    }

    private static List<(string Screen, List<string> Texts)> Screens(ShellState shell)
    {
        var screens = new List<(string, List<string>)> { ("punch list", [.. PunchRows.Of(PunchScreen.At(shell.Context), shell.Context).Select(r => r.Text)]) };
        foreach (var (name, keys) in Ways)
        {
            shell.Press("1");
            foreach (var key in keys)
                shell.Press(key);
            screens.Add((name, Drawn(shell, shell.Screen)));
        }
        var unit = shell.Context.House.Units[0].Id;
        return [.. screens, .. Walked.Select(s => ($"walk {s}", Drawn(shell, WalkScreen.OnStep(shell.Context, StepList.Find(s)!, unit)!)))];
    }

    private static List<string> Drawn(ShellState shell, IScreen screen)
    {
        var frame = new ListeningFrame();
        screen.Draw(frame.All, shell.Context, null);
        return frame.Texts;
    }

    /// <summary>Hears every text that is put on it, whole.</summary>
    private sealed class ListeningFrame() : Frame(160, 90)
    {
        public List<string> Texts { get; } = [];

        /// <summary>Words as they stand when they go over several lines.</summary>
        private static string Plain(string text) => string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        public override void Cut(string whole, string left, Tone tone) => Texts.Add(Plain(whole));

        public override void Shown(string whole) => Texts.Add(Plain(whole));
    }
}

using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Writing;

/// <summary>
/// A value that nobody checked is changed: whatever reads otherwise on a paper then was worked out with it, and has its mark. So no list says which
/// figures come from a sheet.
/// </summary>
public class SheetMarksTests
{
    private const string Mark = "\u00A0?";

    /// <summary>What counts findings, which those who tell of one mark, and advice that is true of whatever hangs.</summary>
    private static readonly string[] Counting = ["How far each phase is", "Still to be fixed", "Care"];

    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void WhatAnUncheckedValueDecidesHasItsMark(string id)
    {
        var job = FinishedHouse.Build();
        var (paper, silent, decided) = (PaperList.Find(id)!, new List<string>(), 0);
        foreach (var part in job.House.Items.Values.Where(i => FactTable.IsKit(i.Kind) && !i.Removed).ToList())
        {
            foreach (var fact in SheetValues.Of(part).Where(f => part.Latest(f)?.Stored is not null))
            {
                var all = OtherValues.Of(job.House, part, fact).ToList();
                Assert.True(all.Count > 1, $"{part.Kind} {fact.Name} has no other values to try.");
                // Two small values, and two that are large enough for whatever the house has of them.
                foreach (var pair in new[] { all.Take(2).ToList(), all.SkipLast(1).TakeLast(2).ToList() }.Where(p => p.Count == 2))
                {
                    var written = pair.ConvertAll(o => Written(job, paper, part, fact, o));
                    var differing = Differing(written[0], written[1]).ToList();
                    decided += differing.Count;
                    silent.AddRange(differing.Where(d => !d.Contains(Mark, StringComparison.Ordinal)).Select(d => $"{part.Kind} {fact.Name}: {d}"));
                }
            }
        }
        Assert.True(silent.Count == 0, $"{silent.Count} of {decided}\n{string.Join('\n', silent.Take(60))}");
    }

    [Fact]
    public void WhereEverythingWasCheckedThereIsNoMarkAndNoExplanation() => Assert.All(PaperList.All, p =>
        Assert.DoesNotContain(Mark, p.Write(FinishedHouse.Data(FinishedHouse.Build().Scribe.Log)).Markdown, StringComparison.Ordinal));

    private static List<string> Written(TestJob job, Paper paper, Item part, Fact fact, string value)
    {
        var isSo = value == part.Latest(fact)?.Stored && part.Latest(Companion.Checked(fact.Name))?.Stored is null;
        if (!isSo)
            job.Do(new Draft("another value").PutStored(part.Id, fact.Name, value).PutStored(part.Id, Companion.Checked(fact.Name), null));
        var markdown = paper.Write(FinishedHouse.Data(job.Scribe.Log)).Markdown;
        if (!isSo)
            job.Scribe.Undo();
        return [.. Lines(markdown)];
    }

    /// <summary>Whatever stands on a paper, without what counts findings and what heads a table: a finding is marked where it is told.</summary>
    private static IEnumerable<string> Lines(string markdown)
    {
        var (section, lines) = ("", markdown.Split('\n'));
        foreach (var (at, line) in lines.Index())
        {
            section = line.StartsWith('#') ? line.TrimStart('#', ' ') : section;
            if (!Counting.Contains(section) && !line.Contains("Stop first.", StringComparison.Ordinal) && !line.StartsWith("A ?", StringComparison.Ordinal)
                && !line.StartsWith("Checks that pass only by values that nobody checked", StringComparison.Ordinal)
                && !line.StartsWith("Written on ", StringComparison.Ordinal)
                && !line.StartsWith("|--", StringComparison.Ordinal)
                && lines.ElementAtOrDefault(at + 1)?.StartsWith("|--", StringComparison.Ordinal) != true)
            {
                var cells = line.Replace(Inline.BlankMark, "–", StringComparison.Ordinal)
                    .Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
                yield return $"{section} / {string.Join(" | ", cells)}";
            }
        }
    }

    private static IEnumerable<string> Differing(List<string> one, List<string> other) => one.Count == other.Count
        ? one.Zip(other).Where(p => p.First != p.Second).Select(p => $"{p.First} >< {p.Second}")
        : one.SequenceEqual(other) ? [] : [string.Join('\n', one.Except(other).Concat(other.Except(one)))];
}

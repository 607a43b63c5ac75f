using System.Text.RegularExpressions;
using TrimOut.TrueHouse.Tests.Recording;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;
using Xunit.Abstractions;

namespace TrimOut.TrueHouse.Tests;

/// <summary>What is said shows figures in the units of the house, and no finer than its tape.</summary>
public partial class FiguresInSentencesTests(ITestOutputHelper output)
{
    [Fact]
    public void ASentenceShowsTheUnitsOfTheHouseAndNoMoreThanItsTapeHas()
    {
        var odd = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var run in FaultRecord.All.SelectMany(r => r.Runs))
        {
            var metric = RandomHouse.Of(run.Seed).Metric;
            foreach (var (check, text) in run.Sentences)
            {
                foreach (var fault in OddIn(text, metric))
                    odd.TryAdd($"{check}: {fault}", $"TRIMOUT_TRUE_SEED={run.Seed} TRIMOUT_TRUE_FAULT={run.Fault.Id}: {text}");
            }
        }
        foreach (var (what, example) in odd)
            output.WriteLine($"{what}: {example}");
        var newly = odd.Where(o => !KnownOddFigures.All.Contains(o.Key) && !KnownOddFigures.Seldom.Contains(o.Key)).Select(o => $"{o.Key}: {o.Value}").ToList();
        if (Seeds.AsInTheGate)
            newly.AddRange(KnownOddFigures.All.Where(k => !odd.ContainsKey(k)).Select(k => $"{k}: is not said now: take it out of the known odd figures"));
        Assert.True(newly.Count == 0, string.Join('\n', newly));
    }

    private static IEnumerable<string> OddIn(string said, bool metric)
    {
        // What a rule says in another unit stands in brackets after the house's own.
        var text = InBrackets().Replace(said, "");
        if (metric && Inches().IsMatch(text))
            yield return "inches in a metric house";
        if (metric && PartsOfMillimetres().IsMatch(text))
            yield return "parts of a millimeter";
        if (RunInMillimetres().IsMatch(text))
            yield return "a run in millimeters";
        if (!metric && Metres().IsMatch(text))
            yield return "meters in a house in inches";
        if (!metric && Millimetres().IsMatch(text))
            yield return "millimeters in a house in inches";
        if (!metric && (Finer().IsMatch(text) || Decimals().IsMatch(text)))
            yield return "finer than a sixteenth";
    }

    [GeneratedRegex(@"(?<![A-Za-z\d])\d+(?:/\d+)?""|\d (?:in|ft)\b")]
    private static partial Regex Inches();

    [GeneratedRegex(@"\([^)]*\)")]
    private static partial Regex InBrackets();

    [GeneratedRegex(@"\d\.\d+ mm\b")]
    private static partial Regex PartsOfMillimetres();

    [GeneratedRegex(@"\d mm\b")]
    private static partial Regex Millimetres();

    [GeneratedRegex(@"\d{5,}(?:\.\d+)? mm\b")]
    private static partial Regex RunInMillimetres();

    [GeneratedRegex(@"\d m\b")]
    private static partial Regex Metres();

    [GeneratedRegex(@"/(?:32|64)")]
    private static partial Regex Finer();

    [GeneratedRegex(@"\d\.\d+ in\b")]
    private static partial Regex Decimals();
}

using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Pages;

/// <summary>How an example's house began, told in a sentence where it is one of <see cref="Jobs"/>, and what was done in it since.</summary>
internal static class Beginning
{
    private const string Walk = "a walked window W01: a roller of 36 x 60 in, inside, with lead and entry left, "
        + "the entry 1 in from the jamb, 2 in back and 1 in below the head";

    // The longest first: an ordered window was measured before, and a measured one was walked.
    private static readonly Lazy<IReadOnlyList<(string Words, DisplayUnits Units, string[] Begun)>> Known = new(() =>
    [
        Told($"The house has {Walk}; measured twice, square and 5 in deep, with a fascia of 3 in; ordered as the measures give it.", Jobs.Ordered()),
        Told($"The house has {Walk}; measured twice, square and 5 in deep, with a fascia of 3 in.", Jobs.Measured()),
        Told($"The house has {Walk}; roughed in with 60 ft of 16/2 in walls, tails of 36 in and 72 in, "
            + "both ends labeled W01, a first loop of 0.57 ohm.", Jobs.Roughed()),
        Told($"The house has {Walk}.", Jobs.Walked()),
        Told("The house is new, with a kit in which every value is filled in.", new TestJob()),
        Told("The house is new and counts in millimeters, with a kit in which every value is filled in.", Jobs.Metric()),
    ]);

    /// <summary>The sentences, and what else was done before the example's own.</summary>
    public static (string Words, IReadOnlyList<string> Told) Of(DisplayUnits units, IReadOnlyList<string> begun)
    {
        var (words, _, known) = Known.Value.First(k => k.Units == units && begun.Take(k.Begun.Length).SequenceEqual(k.Begun));
        var rest = begun.Skip(known.Length).ToList();
        while (Another(rest) is var (more, count))
        {
            words += " " + more;
            rest.RemoveRange(0, count);
        }
        return (words, rest);
    }

    /// <summary>One more window that is brought as far as a known one, in the same room.</summary>
    private static (string Words, int Count)? Another(List<string> rest)
    {
        const string added = "New window ";
        if (rest.Count == 0 || !rest[0].StartsWith(added, StringComparison.Ordinal))
            return null;
        var tag = rest[0][added.Length..];
        foreach (var (words, _, begun) in Known.Value.Where(k => k.Words.Contains("W01", StringComparison.Ordinal)))
        {
            var same = begun.SkipWhile(b => b != added + "W01").Select(b => b.Replace("W01", tag, StringComparison.Ordinal)).ToList();
            if (rest.Take(same.Count).SequenceEqual(same))
                return (words.Replace("The house has", "It also has", StringComparison.Ordinal).Replace("W01", tag, StringComparison.Ordinal), same.Count);
        }
        return null;
    }

    private static (string, DisplayUnits, string[]) Told(string words, TestJob job) =>
        (words, job.House.DisplayUnits, [.. job.Scribe.Log.Changes.Select(c => c.What)]);
}

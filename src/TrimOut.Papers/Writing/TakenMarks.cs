using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Writing;

/// <summary>Numbers for instrument, person and day of readings, each told once below a table: mostly a few stand behind all of them.</summary>
internal sealed class TakenMarks
{
    private readonly Dictionary<(string? Meter, string By, string On), string> _marks = [];

    /// <summary>The numbers of the facts of an item that are known; a dash where none is.</summary>
    public Inline Of(Subject subject, params ReadOnlySpan<Fact> facts)
    {
        var marks = new List<string>();
        foreach (var taken in subject.TakenBy(facts))
        {
            if (!_marks.TryGetValue(taken, out var mark))
                _marks.Add(taken, mark = (_marks.Count + 1).ToString(CultureInfo.InvariantCulture));
            marks.Add(mark);
        }
        return marks.JoinOrDash();
    }

    /// <summary>Says what the numbers stand for; nothing where there is none.</summary>
    public void Write(MarkdownWriter to)
    {
        if (_marks.Count > 0)
            to.Say($"Read: {Inline.Join("; ", [.. _marks.Select(m => Inline.Join(" ", [$"({m.Value})", Readings.OnPaper(m.Key)]))])}.");
    }
}

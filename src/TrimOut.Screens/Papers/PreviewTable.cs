using System.Collections.Immutable;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using Line = System.Collections.Generic.IReadOnlyList<(string Text, TrimOut.Screens.Frames.Tone Tone)>;

namespace TrimOut.Screens.Papers;

/// <summary>
/// A table in character cells. Columns share the width; where their longest words have no room side by side, each row stands as a small list instead, so that
/// no figure is cut in half.
/// </summary>
internal static class PreviewTable
{
    private const int Between = 3;

    /// <summary>The table in lines.</summary>
    /// <param name="rows">Its rows, the first is its head.</param>
    /// <param name="width">Cells in a line.</param>
    /// <param name="glyphs">Signs to draw with.</param>
    public static IEnumerable<Line> Lay(ImmutableArray<ImmutableArray<ImmutableArray<PreviewText>>> rows, int width, Glyphs glyphs)
    {
        var columns = rows.Max(r => r.Length);
        var (least, most) = (new int[columns], new int[columns]);
        foreach (var row in rows)
        {
            for (var at = 0; at < row.Length; at++)
            {
                var text = string.Concat(row[at].Select(t => t.Text));
                most[at] = Math.Max(most[at], PreviewPages.Cells(text));
                least[at] = Math.Max(least[at], text.Split(' ').Max(PreviewPages.Cells));
            }
        }
        var room = width - Between * (columns - 1);
        return least.Sum() <= room ? SideBySide(rows, Share(least, most, room), glyphs) : AsLists(rows, width, glyphs);
    }

    /// <summary>To each its longest word at least; what is left goes to the columns that want more, a cell at a time to the one that lacks most.</summary>
    private static int[] Share(int[] least, int[] most, int room)
    {
        int[] widths = [.. least];
        for (var left = room - least.Sum(); left > 0; left--)
        {
            var lacking = -1;
            for (var at = 0; at < widths.Length; at++)
            {
                if (widths[at] < most[at] && (lacking < 0 || most[at] - widths[at] > most[lacking] - widths[lacking]))
                    lacking = at;
            }
            if (lacking < 0)
                break;
            widths[lacking]++;
        }
        return widths;
    }

    private static IEnumerable<Line> SideBySide(ImmutableArray<ImmutableArray<ImmutableArray<PreviewText>>> rows, int[] widths, Glyphs glyphs)
    {
        var between = $" {glyphs.Down} ";
        foreach (var (number, row) in rows.Index())
        {
            var cells = row.Select((c, at) => PreviewPages.Wrapped(c, widths[at], number == 0 || at == 0 ? Tone.Strong : Tone.Text)).ToList();
            for (var y = 0; y < cells.Max(c => c.Count); y++)
            {
                var line = new List<(string, Tone)>();
                for (var at = 0; at < cells.Count; at++)
                {
                    var piece = y < cells[at].Count ? cells[at][y] : [];
                    line.AddRange(piece);
                    if (at < cells.Count - 1)
                        line.Add((new string(' ', widths[at] - piece.Sum(p => PreviewPages.Cells(p.Text))) + between, Tone.Dim));
                }
                yield return line;
            }
            if (number == 0)
                yield return [(string.Concat(Enumerable.Repeat(glyphs.Across, widths.Sum() + Between * (widths.Length - 1))), Tone.Dim)];
        }
    }

    private static IEnumerable<Line> AsLists(ImmutableArray<ImmutableArray<ImmutableArray<PreviewText>>> rows, int width, Glyphs glyphs)
    {
        var head = rows[0].Select(c => string.Concat(c.Select(t => t.Text))).ToList();
        foreach (var row in rows.Skip(1))
        {
            foreach (var (at, cell) in row.Index())
            {
                var indent = at == 0 ? "" : "  ";
                foreach (var line in PreviewPages.Wrapped([new($"{head[at]}: ", at == 0), .. cell], width - indent.Length, at == 0 ? Tone.Strong : Tone.Text))
                    yield return [(indent, Tone.Text), .. line];
            }
            yield return [(glyphs.Across, Tone.Dim)];
        }
    }
}

using System.Text;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using Line = System.Collections.Generic.IReadOnlyList<(string Text, TrimOut.Screens.Frames.Tone Tone)>;

namespace TrimOut.Screens.Papers;

/// <summary>A heading of a paper that is looked at.</summary>
/// <param name="Line">The line that it stands on.</param>
/// <param name="Level">Of the heading, from 1 on.</param>
/// <param name="Text">What it says.</param>
internal sealed record PreviewHeading(int Line, int Level, string Text);

/// <summary>A paper laid out in lines of character cells, kept for the width that it was last asked for.</summary>
internal sealed class PreviewPages(IReadOnlyList<PreviewBlock> blocks)
{
    private static readonly Line Empty = [];

    private List<Line> _lines = [];
    private List<PreviewHeading> _headings = [];
    private int _width;
    private Glyphs? _glyphs;

    /// <summary>How many lines there were at the last width.</summary>
    public int Count => _lines.Count;

    /// <summary>The line of the next heading; the same line where there is none.</summary>
    public int HeadingAfter(int line) => _headings.Find(h => h.Line > line)?.Line ?? line;

    /// <summary>The headings at the last width, first to last.</summary>
    public IReadOnlyList<PreviewHeading> Headings => _headings;

    /// <summary>All lines, none longer than so many cells.</summary>
    public IReadOnlyList<Line> Lines(int width, Glyphs glyphs)
    {
        if (_width == width && _glyphs == glyphs)
            return _lines;
        (_lines, _headings, _width, _glyphs) = ([], [], width, glyphs);
        foreach (var block in blocks)
            Add(block, width, glyphs);
        return _lines;
    }

    private void Add(PreviewBlock block, int width, Glyphs glyphs)
    {
        if (_lines.Count > 0 && block is not { Kind: PreviewKind.Item })
            _lines.Add(Empty);
        switch (block.Kind)
        {
            case PreviewKind.Heading:
                _headings.Add(new PreviewHeading(_lines.Count, block.Level, string.Concat(block.Text.Select(t => t.Text))));
                var mark = block.Level > 2 ? glyphs.Arrow + " " : "";
                _lines.AddRange(Wrapped([new(mark + string.Concat(block.Text.Select(t => t.Text)))], width, Tone.Heading));
                if (block.Level <= 2)
                    _lines.Add([(string.Concat(Enumerable.Repeat(block.Level == 1 ? glyphs.Solid : glyphs.Across, width)), Tone.Heading)]);
                break;
            case PreviewKind.Item:
                var indent = 2 * block.Level;
                var hang = indent + block.Mark.Length + 1;
                if (_lines.Count > 0 && _headings is [.., var last] && last.Line == _lines.Count - 2)
                    _lines.Add(Empty);
                foreach (var (at, line) in Wrapped(block.Text, Math.Max(8, width - hang), Tone.Text).Index())
                    _lines.Add([(at == 0 ? new string(' ', indent) + block.Mark + " " : new string(' ', hang), Tone.Text), .. line]);
                break;
            case PreviewKind.Table:
                _lines.AddRange(PreviewTable.Lay(block.Rows, width, glyphs));
                break;
            default:
                _lines.AddRange(Wrapped(block.Text, width, Tone.Text));
                break;
        }
    }

    /// <summary>Texts in lines of at most so many cells, each keeping its own tone.</summary>
    internal static List<Line> Wrapped(IEnumerable<PreviewText> texts, int width, Tone tone)
    {
        var lines = new List<Line>();
        var line = new List<(string, Tone)>();
        var used = 0;
        foreach (var text in texts)
        {
            var own = text.Picture ? Tone.Drawing : text.Strong ? Tone.Strong : tone;
            var words = text.Picture ? $"[drawing: {text.Text}]" : text.Text;
            var begun = new StringBuilder();
            // A space at either end of a text parts it from its neighbour.
            if (words.StartsWith(' ') && used > 0 && used < width)
            {
                begun.Append(' ');
                used++;
            }
            var first = true;
            foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                foreach (var piece in Pieces(word, width))
                {
                    var room = Cells(piece) + (first ? 0 : 1);
                    if (used > 0 && used + room > width)
                    {
                        line.Add((begun.ToString(), own));
                        lines.Add(line);
                        (line, begun, used, first) = ([], new StringBuilder(), 0, true);
                        room = Cells(piece);
                    }
                    begun.Append(first ? "" : " ").Append(piece);
                    (used, first) = (used + room, false);
                }
            }
            if (words.EndsWith(' ') && !first && used < width)
            {
                begun.Append(' ');
                used++;
            }
            if (begun.Length > 0)
                line.Add((begun.ToString(), own));
        }
        if (line.Count > 0 || lines.Count == 0)
            lines.Add(line);
        return lines;
    }

    /// <summary>How many cells a text takes; most are plain.</summary>
    internal static int Cells(string text) => Ascii.IsValid(text) ? text.Length : TextWidth.Of(text);

    private static IEnumerable<string> Pieces(string word, int width) => Cells(word) <= width ? [word] : TextWidth.Wrap(word, width);
}

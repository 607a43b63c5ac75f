using System.Globalization;
using System.Text;
using TrimOut.Papers.Drawings;

namespace TrimOut.Papers.Writing;

/// <summary>Writes CommonMark with pipe tables that also reads well as plain text. Line ends are always a single line feed.</summary>
/// <remarks>A string given as prose, heading or column is our own words; a string given as a cell is typed text.</remarks>
internal sealed class MarkdownWriter(Words words, string drawingsBegin, SortedDictionary<string, string> drawings)
{
    private const int WidestPadded = 32;

    private readonly StringBuilder _text = new();

    /// <summary>The wording that it writes in.</summary>
    public Words Words => words;

    /// <summary>What the pictures take that the paper has so far, in bytes as they are embedded.</summary>
    public long PictureBytes => drawings.Values.Where(Svg.HoldsAPicture).Sum(d => (long)d.Length);

    /// <summary>A heading in our own words; 1 is the title of the paper.</summary>
    public MarkdownWriter Heading(int level, string english) => Heading(level, Inline.Ours(english));

    /// <summary>A heading in our own words with typed text in them.</summary>
    public MarkdownWriter Heading(int level, Phrase phrase) => Heading(level, Inline.Ours(phrase));

    /// <summary>A heading.</summary>
    public MarkdownWriter Heading(int level, Inline title)
    {
        Begin().Append('#', level).Append(' ').Append(title.Markdown(words)).Append('\n');
        return this;
    }

    /// <summary>A paragraph in our own words.</summary>
    public MarkdownWriter Say(string english) => Say(Inline.Ours(english));

    /// <summary>A paragraph in our own words with typed text in them.</summary>
    public MarkdownWriter Say(Phrase phrase) => Say(Inline.Ours(phrase));

    /// <summary>A paragraph.</summary>
    public MarkdownWriter Say(Inline paragraph)
    {
        Begin().Append(paragraph.Markdown(words)).Append('\n');
        return this;
    }

    /// <summary>A list.</summary>
    public MarkdownWriter List(params IEnumerable<Inline> items)
    {
        Begin();
        foreach (var item in items)
            _text.Append("- ").Append(item.Markdown(words)).Append('\n');
        return this;
    }

    /// <summary>A numbered list.</summary>
    public MarkdownWriter Steps(params IEnumerable<Inline> items)
    {
        Begin();
        foreach (var (at, item) in items.Index())
            _text.Append(CultureInfo.InvariantCulture, $"{at + 1}. {item.Markdown(words)}\n");
        return this;
    }

    /// <summary>A table, or a sentence where it would have no rows.</summary>
    /// <param name="columns">The heading of each column.</param>
    /// <param name="rows">The rows; each has a cell per column.</param>
    /// <param name="whenEmpty">What is said where there is no row.</param>
    /// <exception cref="ArgumentException">A row has another number of cells.</exception>
    public MarkdownWriter Table(string[] columns, IEnumerable<Inline[]> rows, string whenEmpty = "None.") =>
        Table([.. columns.Select(Inline.Ours)], rows, whenEmpty);

    /// <summary>A table with typed text in its headings, or a sentence where it would have no rows.</summary>
    /// <exception cref="ArgumentException">A row has another number of cells.</exception>
    public MarkdownWriter Table(Inline[] columns, IEnumerable<Inline[]> rows, string whenEmpty = "None.")
    {
        var cells = new List<string[]> { Array.ConvertAll(columns, Cell) };
        foreach (var row in rows)
        {
            if (row.Length != columns.Length)
                throw new ArgumentException($"A row has {row.Length} cells where there are {columns.Length} columns.", nameof(rows));
            cells.Add(Array.ConvertAll(row, Cell));
        }
        if (cells.Count == 1)
            return Say(whenEmpty);
        var widths = new int[columns.Length];
        foreach (var row in cells)
        {
            for (var at = 0; at < widths.Length; at++)
                widths[at] = Math.Clamp(Width(row[at]), Math.Max(3, widths[at]), WidestPadded);
        }
        Begin();
        AppendRow(cells[0], widths);
        foreach (var width in widths)
            _text.Append('|').Append('-', width + 2);
        _text.Append("|\n");
        foreach (var row in cells.Skip(1))
            AppendRow(row, widths);
        return this;
    }

    /// <summary>A table without the columns in which nothing stands but dashes, the first excepted; or a sentence where it would have no rows.</summary>
    /// <exception cref="ArgumentException">A row has another number of cells.</exception>
    public MarkdownWriter Filled(string[] columns, IEnumerable<Inline[]> rows, string whenEmpty = "None.")
    {
        var all = rows.ToList();
        var kept = Enumerable.Range(0, columns.Length).Where(c => c == 0 || all.Exists(r => r[c] != Inline.Dash)).ToList();
        return Table([.. kept.Select(c => columns[c])], all.Select(r => r.Length == columns.Length ? [.. kept.Select(c => r[c])] : r), whenEmpty);
    }

    /// <summary>A table of facts without those of which nothing was noted, or a sentence where that is so of all.</summary>
    public MarkdownWriter Known(string what, string value, string whenEmpty, params IEnumerable<(string What, Inline Value)> facts) =>
        Table([what, value], facts.Where(f => f.Value != Inline.Dash).Select(f => Row(Inline.Ours(f.What), f.Value)), whenEmpty);

    /// <summary>A table of facts: what, and its value.</summary>
    public MarkdownWriter Facts(string what, string value, params IEnumerable<(string What, Inline Value)> facts) =>
        Table([what, value], facts.Select(f => Row(Inline.Ours(f.What), f.Value)));

    /// <summary>A drawing, which stands in a file beside the Markdown and inside the HTML page.</summary>
    /// <param name="about">What it is of, for its file's name.</param>
    /// <param name="description">What it shows, for whoever can't see it.</param>
    /// <param name="draw">Draws it.</param>
    public MarkdownWriter Draw(string about, Inline description, Func<Words, Svg> draw) => Say(Drawing(about, description, draw));

    /// <summary>A drawing to stand in a line, beside another one.</summary>
    public Inline Drawing(string about, Inline description, Func<Words, Svg> draw)
    {
        var path = string.Create(CultureInfo.InvariantCulture, $"{drawingsBegin}-{drawings.Count + 1:000}-{Anchor.InFileName(about)}.svg");
        drawings.Add(path, draw(words).Render(description.Plain(words)));
        return Inline.Picture(description, path);
    }

    /// <summary>The cells of one row.</summary>
    public static Inline[] Row(params Inline[] cells) => cells;

    /// <summary>The paper as it is so far.</summary>
    public override string ToString() => _text.ToString();

    private string Cell(Inline cell) => cell.Markdown(words) is { Length: > 0 } text ? text : Inline.Dash.Markdown(words);

    /// <summary>Begins a block: with a blank line, except at the beginning.</summary>
    private StringBuilder Begin() => _text.Length > 0 ? _text.Append('\n') : _text;

    private void AppendRow(string[] cells, int[] widths)
    {
        for (var at = 0; at < cells.Length; at++)
            _text.Append("| ").Append(cells[at]).Append(' ', Math.Max(0, widths[at] - Width(cells[at])) + 1);
        _text.Append("|\n");
    }

    private static int Width(string cell) => Ascii.IsValid(cell) ? cell.Length : new StringInfo(cell).LengthInTextElements;
}

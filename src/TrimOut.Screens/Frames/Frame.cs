using System.Text;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Frames;

/// <summary>One cell of a screen; the second half of a wide character holds an empty text.</summary>
/// <param name="Text">What stands in it.</param>
/// <param name="Tone">What that is.</param>
/// <param name="Tint">Two pixels of a picture that go in the place of the text where the terminal has colours for them.</param>
internal readonly record struct Cell(string Text, Tone Tone, Tint? Tint = null);

/// <summary>Where the text field lies while something is typed.</summary>
internal readonly record struct Slot(int X, int Y, int Width);

/// <summary>A whole screen as text: made by pure functions, compared by tests, put on the terminal by one view.</summary>
internal class Frame
{
    private readonly Cell[] _cells;

    public Frame(int width, int height)
    {
        Width = width;
        Height = height;
        _cells = new Cell[width * height];
        Array.Fill(_cells, new Cell(" ", Tone.Text));
    }

    public int Width { get; }

    public int Height { get; }

    public Slot? Slot { get; set; }

    /// <summary>Where clicks mean something; what was put last lies on top.</summary>
    public List<Spot> Spots { get; } = [];

    /// <summary>Told what was cut because it did not fit, and what is left of it. Tests listen.</summary>
    public virtual void Cut(string whole, string left, Tone tone) { }

    /// <summary>Told what stands there whole. Tests listen.</summary>
    public virtual void Shown(string whole) { }

    public Area All => new(this, 0, 0, Width, Height);

    public ReadOnlySpan<Cell> Row(int y) => _cells.AsSpan(y * Width, Width);

    public virtual void Set(int x, int y, string text, int columns, Tone tone)
    {
        var at = y * Width + x;
        if (_cells[at].Text.Length == 0 && x > 0)
            _cells[at - 1] = new Cell(" ", _cells[at - 1].Tone);
        _cells[at] = new Cell(text, tone);
        if (columns == 2)
            _cells[at + 1] = new Cell("", tone);
        var next = at + columns;
        if (x + columns < Width && _cells[next].Text.Length == 0)
            _cells[next] = new Cell(" ", _cells[next].Tone);
    }

    /// <summary>Puts two pixels of a picture into a cell.</summary>
    /// <param name="x">Its column.</param>
    /// <param name="y">Its row.</param>
    /// <param name="shade">The sign of one column that goes for them where there are no colours.</param>
    /// <param name="tint">The pixels; null where only the sign is to be shown.</param>
    public void SetTint(int x, int y, string shade, Tint? tint)
    {
        Set(x, y, shade, 1, Tone.Drawing);
        _cells[y * Width + x] = new Cell(shade, Tone.Drawing, tint);
    }

    /// <summary>Puts a plain sign in place of one that the terminal may not have.</summary>
    public void Replace(string sign, string plain)
    {
        for (var at = 0; at < _cells.Length; at++)
        {
            if (_cells[at].Text == sign)
                _cells[at] = _cells[at] with { Text = plain };
        }
    }

    /// <summary>The text of the screen, without spaces at the ends of lines.</summary>
    public string ToText()
    {
        var text = new StringBuilder();
        for (var y = 0; y < Height; y++)
        {
            var line = new StringBuilder();
            foreach (var cell in Row(y))
                line.Append(cell.Text);
            text.Append(line.ToString().TrimEnd()).Append('\n');
        }
        return text.ToString();
    }
}

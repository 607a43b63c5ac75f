using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Frames;

/// <summary>A rectangle of a frame that text is put on; what falls outside is cut off.</summary>
internal readonly record struct Area(Frame Frame, int X, int Y, int Width, int Height)
{
    /// <summary>A part of this area, cut to it.</summary>
    public Area Part(int x, int y, int width, int height)
    {
        var (left, top) = (Math.Clamp(x, 0, Width), Math.Clamp(y, 0, Height));
        return new(Frame, X + left, Y + top, Math.Clamp(width, 0, Width - left), Math.Clamp(height, 0, Height - top));
    }

    public Area Rows(int from, int count) => Part(0, from, Width, count);

    /// <summary>Puts text at a place; returns the column after it.</summary>
    public int Put(int x, int y, string text, Tone tone = Tone.Text)
    {
        if (y < 0 || y >= Height)
            return x;
        foreach (var (grapheme, columns) in TextWidth.Graphemes(text))
        {
            if (x + columns > Width)
            {
                Frame.Cut(text, "", tone);
                return x;
            }
            if (x >= 0)
                Frame.Set(X + x, Y + y, grapheme, columns, tone);
            x += columns;
        }
        Frame.Shown(text);
        return x;
    }

    /// <summary>Puts text into so many cells, cut with an ellipsis or filled up with spaces.</summary>
    public int PutFit(int x, int y, int cells, string text, Tone tone = Tone.Text)
    {
        var fit = TextWidth.Fit(text, Math.Min(cells, Width - x));
        if (fit.Length > 0 && fit[^1] == TextWidth.Cut && text[^1] != TextWidth.Cut)
            Frame.Cut(text, fit, tone);
        var end = Put(x, y, fit, tone);
        Fill(end, y, x + cells - end, tone);
        return x + cells;
    }

    /// <summary>Puts two pixels of a picture into a cell; see <see cref="Frames.Frame.SetTint"/>.</summary>
    public void PutTint(int x, int y, string shade, Tint? tint)
    {
        if (x >= 0 && x < Width && y >= 0 && y < Height)
            Frame.SetTint(X + x, Y + y, shade, tint);
    }

    public void PutRight(int y, string text, Tone tone = Tone.Text) => Put(Width - TextWidth.Of(text), y, text, tone);

    /// <summary>Puts text in as many lines as it takes, up to so many, the last of which says when it goes on; returns the line after it.</summary>
    public int PutWrapped(int x, int y, int lines, string text, Tone tone = Tone.Text)
    {
        var wrapped = TextWidth.Wrap(text, Width - x, Math.Min(lines, Height - y), out var whole);
        foreach (var line in wrapped)
            Put(x, y++, line, tone);
        if (whole)
            Frame.Shown(text);
        else
            Frame.Cut(text, string.Join(' ', wrapped), tone);
        return y;
    }

    public void Fill(int x, int y, int cells, Tone tone)
    {
        for (var at = Math.Max(0, x); at < Math.Min(Width, x + cells); at++)
            Put(at, y, " ", tone);
    }

    public void Clear(Tone tone = Tone.Text)
    {
        for (var y = 0; y < Height; y++)
            Fill(0, y, Width, tone);
    }

    /// <summary>Puts a figure against the right edge of so many cells; one that is wider begins at the left, and is cut there.</summary>
    public void PutFigure(int x, int y, int cells, string figure, Tone tone = Tone.Text)
    {
        var wide = TextWidth.Of(figure);
        Fill(x, y, Math.Max(0, cells - wide), tone);
        PutFit(x + Math.Max(0, cells - wide), y, Math.Min(cells, wide), figure, tone);
    }

    /// <summary>Where a click puts the cursor, or opens what it is on already.</summary>
    public void PutSpot(int x, int y, int cells, bool chosen, Func<IScreen?> choose)
    {
        if (y >= 0 && y < Height && cells > 0)
            Frame.Spots.Add(new Spot(X + x, Y + y, Math.Min(cells, Width - x), null, choose, chosen));
    }

    /// <summary>Where the text field lies: at a place, so many cells wide.</summary>
    public void PutSlot(int x, int y, int cells) => Frame.Slot = new Slot(X + x, Y + y, Math.Max(1, Math.Min(cells, Width - x)));
}

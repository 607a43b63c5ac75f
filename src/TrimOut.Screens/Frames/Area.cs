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
                break;
            if (x >= 0)
                Frame.Set(X + x, Y + y, grapheme, columns, tone);
            x += columns;
        }
        return x;
    }

    /// <summary>Puts text into so many cells, cut with an ellipsis or filled up with spaces.</summary>
    public int PutFit(int x, int y, int cells, string text, Tone tone = Tone.Text)
    {
        var fit = TextWidth.Fit(text, Math.Min(cells, Width - x));
        var end = Put(x, y, fit, tone);
        Fill(end, y, x + cells - end, tone);
        return x + cells;
    }

    public void PutRight(int y, string text, Tone tone = Tone.Text) => Put(Width - TextWidth.Of(text), y, text, tone);

    /// <summary>Puts text in as many lines as it takes, up to so many; returns the line after it.</summary>
    public int PutWrapped(int x, int y, int lines, string text, Tone tone = Tone.Text)
    {
        foreach (var line in TextWidth.Wrap(text, Width - x).Take(lines))
            Put(x, y++, line, tone);
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

    /// <summary>Where the text field lies: at a place, so many cells wide.</summary>
    public void PutSlot(int x, int y, int cells) => Frame.Slot = new Slot(X + x, Y + y, Math.Max(1, Math.Min(cells, Width - x)));
}

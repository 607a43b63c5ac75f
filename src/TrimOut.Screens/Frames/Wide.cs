namespace TrimOut.Screens.Frames;

/// <summary>When a screen has room for a picture or a card beside its list.</summary>
internal static class Wide
{
    /// <summary>As wide as a list at its narrowest and a card beside it.</summary>
    private const int Least = 120;

    /// <summary>What a list needs at the least.</summary>
    private const int LeastList = 78;

    private const int MostCard = 64;

    /// <summary>Where the card of a screen would stand beside its list; null on a narrow screen.</summary>
    public static Area? Beside(Area area) => area.Width < Least ? null
        : area.Part(area.Width - Math.Min(MostCard, area.Width - LeastList - 2), 0, area.Width, area.Height);

    /// <summary>The list, and on a wide screen the card beside it, with a line between the two.</summary>
    public static (Area List, Area? Card) Split(Area area, Glyphs glyphs)
    {
        if (area.Width < Least)
            return (area, null);
        var card = Math.Min(MostCard, area.Width - LeastList - 2);
        var list = area.Width - card - 2;
        for (var y = 0; y < area.Height; y++)
            area.Put(list, y, glyphs.Down, Tone.Dim);
        return (area.Part(0, 0, list, area.Height), area.Part(list + 2, 0, card, area.Height));
    }
}

namespace TrimOut.Screens.Frames;

/// <summary>The signs that drawings are made of, for terminals that have them and for those that don't.</summary>
internal sealed record Glyphs(
    string Across, string Down, string TopLeft, string TopRight, string BottomLeft, string BottomRight,
    string Fabric, string Solid, string Lead, string Entry, string Cable, string Bracket,
    string Done, string Begun, string Nothing, string Stop, string Arrow, string Slat, string Light, string Fold)
{
    public static readonly Glyphs Drawn = new("─", "│", "┌", "┐", "└", "┘", "▒", "█", "◆", "●", "~", "▌", "■", "◧", "·", "!", "►", "═", "░", "║");

    public static readonly Glyphs Ascii = new("-", "|", "+", "+", "+", "+", ":", "#", "@", "o", "~", "[", "#", "+", ".", "!", ">", "=", ",", "I");

    public void Box(Area area, Tone tone, string title = "")
    {
        if (area.Width < 2 || area.Height < 2)
            return;
        var named = TextWidth.Fit(title, area.Width - 6) is { Length: > 0 } fit ? $" {fit} " : "";
        for (var x = 1; x < area.Width - 1; x++)
        {
            if (x < 2 || x >= 2 + TextWidth.Of(named))
                area.Put(x, 0, Across, tone);
            area.Put(x, area.Height - 1, Across, tone);
        }
        for (var y = 1; y < area.Height - 1; y++)
        {
            area.Put(0, y, Down, tone);
            area.Put(area.Width - 1, y, Down, tone);
        }
        area.Put(0, 0, TopLeft, tone);
        area.Put(area.Width - 1, 0, TopRight, tone);
        area.Put(0, area.Height - 1, BottomLeft, tone);
        area.Put(area.Width - 1, area.Height - 1, BottomRight, tone);
        area.Put(2, 0, named, Tone.Heading);
    }
}

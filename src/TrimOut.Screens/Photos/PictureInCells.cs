using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Photos;

/// <summary>Puts a picture on cells: two pixels a cell, one above the other, in the terminal's colours; in shades of light where it has too few.</summary>
internal static class PictureInCells
{
    private const string Shades = " .:-=+*#%@";

    /// <summary>
    /// Draws a picture as large as the area allows, in the middle of it; its sides keep their proportion where a cell is twice as high as wide.
    /// </summary>
    public static void Draw(Area area, CellPicture picture, Glyphs glyphs)
    {
        if (area.Width < 1 || area.Height < 1 || picture.Wide < 1 || picture.High < 1)
            return;
        var scale = Math.Min((double)area.Width / picture.Wide, 2.0 * area.Height / picture.High);
        var wide = Math.Clamp((int)Math.Round(picture.Wide * scale), 1, area.Width);
        var rows = Math.Clamp((int)Math.Ceiling(picture.High * scale / 2), 1, area.Height);
        var (left, top) = ((area.Width - wide) / 2, (area.Height - rows) / 2);
        for (var y = 0; y < rows; y++)
        {
            for (var x = 0; x < wide; x++)
            {
                var tint = new Tint(At(picture, x, 2 * y, wide, 2 * rows), At(picture, x, 2 * y + 1, wide, 2 * rows));
                var light = (tint.Above.Light + tint.Below.Light) / 2;
                var shade = Shades[light * (Shades.Length - 1) / 255].ToString();
                area.PutTint(left + x, top + y, shade, glyphs == Glyphs.Ascii ? null : tint);
            }
        }
    }

    /// <summary>The mean of the pixels that lie under one of the dots that it is shown by.</summary>
    private static Dot At(CellPicture picture, int x, int y, int wide, int high)
    {
        var (left, right) = Under(x, wide, picture.Wide);
        var (top, bottom) = Under(y, high, picture.High);
        var (r, g, b, count) = (0, 0, 0, (right - left) * (bottom - top));
        for (var row = top; row < bottom; row++)
        {
            for (var column = left; column < right; column++)
            {
                var at = 3 * (row * picture.Wide + column);
                (r, g, b) = (r + picture.Rgb[at], g + picture.Rgb[at + 1], b + picture.Rgb[at + 2]);
            }
        }
        return new Dot((byte)(r / count), (byte)(g / count), (byte)(b / count));
    }

    private static (int From, int To) Under(int at, int of, int pixels)
    {
        var from = Math.Min(at * pixels / of, pixels - 1);
        return (from, Math.Clamp((at + 1) * pixels / of, from + 1, pixels));
    }
}

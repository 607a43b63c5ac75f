namespace TrimOut.Papers.Photos;

/// <summary>The pixels of a picture as it goes on paper, small enough for a screen made of characters.</summary>
public static class PhotoPixels
{
    /// <summary>The longer side, in pixels: no terminal has as many columns.</summary>
    public const int LongerSide = 360;

    /// <summary>Width, height, and red, green and blue of each pixel, row by row; nothing where the picture can't be shown.</summary>
    public static (int Wide, int High, byte[] Rgb)? Of(Photo photo)
    {
        if (photo.State != PhotoState.Read)
            return null;
        using var read = PhotoShrinker.Decode(photo.Jpeg, LongerSide, out _, out _);
        if (read is null)
            return null;
        var rgba = read.GetPixelSpan();
        var rgb = new byte[read.Width * read.Height * 3];
        for (var at = 0; at < read.Width * read.Height; at++)
            rgba.Slice(4 * at, 3).CopyTo(rgb.AsSpan(3 * at));
        return (read.Width, read.Height, rgb);
    }
}

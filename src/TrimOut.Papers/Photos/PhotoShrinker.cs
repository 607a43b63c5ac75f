using SkiaSharp;

namespace TrimOut.Papers.Photos;

/// <summary>Makes of a picture's file what goes on paper. It takes no more memory than a bound, whatever the file says of itself.</summary>
public static class PhotoShrinker
{
    /// <summary>The longer side of what goes on paper, in pixels: on 60 mm of paper about 300 to the inch.</summary>
    public const int LongerSide = 720;

    /// <summary>The most pixels that are held while a picture is shrunk: 160 MB. A JPEG is shrunk as it is read, so a larger one fits too.</summary>
    public const long MostPixels = 40_000_000;

    private const int Quality = 75;

    /// <summary>Reads a picture: JPEG, PNG, WebP, GIF or BMP.</summary>
    /// <param name="file">All that the file holds.</param>
    public static Photo Read(ReadOnlyMemory<byte> file)
    {
        using var read = Decode(file, LongerSide, out var state, out var origin);
        return read is null ? Photo.Not(state)
            : Upright(read, origin) with { TakenOn = PhotoTime.Of(file).Taken is { } taken ? DateOnly.FromDateTime(taken) : null };
    }

    /// <summary>A picture as its file stores it, shrunk as far as its kind can be shrunk while it is read; null where it can't be read, and why.</summary>
    /// <param name="file">All that the file holds.</param>
    /// <param name="longerSide">About how many pixels are wanted of the longer side.</param>
    /// <param name="state">What came of reading it.</param>
    /// <param name="origin">From where to where its rows go.</param>
    internal static SKBitmap? Decode(ReadOnlyMemory<byte> file, int longerSide, out PhotoState state, out SKEncodedOrigin origin)
    {
        using var data = SKData.CreateCopy(file.Span);
        using var codec = SKCodec.Create(data);
        (state, origin) = (PhotoState.NoPicture, SKEncodedOrigin.Default);
        if (codec is null || codec.Info.Width < 1 || codec.Info.Height < 1)
            return null;
        origin = codec.EncodedOrigin;
        var stored = codec.GetScaledDimensions(Math.Min(1f, (float)longerSide / Math.Max(codec.Info.Width, codec.Info.Height)));
        if ((long)stored.Width * stored.Height > MostPixels)
        {
            state = PhotoState.TooLarge;
            return null;
        }
        var read = new SKBitmap(new SKImageInfo(stored.Width, stored.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        if (read.GetPixels() != IntPtr.Zero && codec.GetPixels(read.Info, read.GetPixels()) == SKCodecResult.Success)
        {
            state = PhotoState.Read;
            return read;
        }
        read.Dispose();
        state = PhotoState.Damaged;
        return null;
    }

    private static Photo Upright(SKBitmap read, SKEncodedOrigin origin)
    {
        var turned = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        var (wide, high) = turned ? (read.Height, read.Width) : (read.Width, read.Height);
        var scale = Math.Min(1f, (float)LongerSide / Math.Max(wide, high));
        using var paper = new SKBitmap(new SKImageInfo(Math.Max(1, (int)(wide * scale)), Math.Max(1, (int)(high * scale)), SKColorType.Rgba8888,
            SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(paper))
        {
            canvas.Clear(SKColors.White);
            canvas.Scale((float)paper.Width / wide, (float)paper.Height / high);
            canvas.Concat(Turn(origin, read.Width, read.Height));
            using var image = SKImage.FromBitmap(read);
            canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        }
        using var jpeg = paper.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return new Photo(PhotoState.Read, jpeg.ToArray(), paper.Width, paper.Height, null);
    }

    /// <summary>From where a pixel is stored to where it is seen: EXIF 2.32, tag 274, says which edges row and column 0 are.</summary>
    private static SKMatrix Turn(SKEncodedOrigin origin, float wide, float high) => origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, wide, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, wide, 0, -1, high, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, high, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, high, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, high, -1, 0, wide, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, wide, 0, 0, 1),
        _ => SKMatrix.Identity,
    };
}

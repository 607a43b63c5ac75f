using System.Globalization;
using System.Text;
using SkiaSharp;

namespace TrimOut.Papers.Tests.Photos;

/// <summary>A photo as a telephone takes it: a wall in uneven light, perhaps a label held before it askew, noise, JPEG, and the time in its EXIF.</summary>
internal static class CameraPhoto
{
    private const int QuietBorder = 4;

    /// <summary>A photo.</summary>
    /// <param name="codes">What is drawn of the codes in it, as the path of a drawing in fields; none for a bare wall.</param>
    /// <param name="field">How many pixels wide a field of a code is.</param>
    /// <param name="degrees">How far each label is turned.</param>
    /// <param name="taken">When it was taken; null writes no EXIF.</param>
    /// <param name="offset">How far the camera's clock is from UTC, as EXIF writes it; null where it does not say.</param>
    /// <param name="seed">What its noise follows from: other seeds give other files.</param>
    public static byte[] Jpeg(IReadOnlyList<string> codes, float field = 8, float degrees = 10, DateTime? taken = null, string? offset = null, int seed = 1,
        int wide = 2400, int high = 1800)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(wide, high, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(new SKColor(150, 132, 110));
            using var stud = new SKPaint { Color = new SKColor(196, 164, 120) };
            for (var x = 0; x < wide; x += 400)
                canvas.DrawRect(x, 0, 90, high, stud);
            foreach (var (at, code) in codes.Index())
                Label(canvas, code, field, degrees, wide * (at + 1f) / (codes.Count + 1), high * 0.45f);
        }
        Light(bitmap, new Random(seed));
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 82);
        var jpeg = data.ToArray();
        return taken is not { } when ? jpeg : [.. jpeg[..2], .. Exif(when, offset), .. jpeg[2..]];
    }

    private static void Label(SKCanvas canvas, string code, float field, float degrees, float x, float y)
    {
        using var path = SKPath.ParseSvgPathData(code);
        var side = path.Bounds.Right + QuietBorder;
        using var white = new SKPaint { Color = SKColors.White };
        using var black = new SKPaint { Color = new SKColor(25, 25, 30) };
        canvas.Save();
        canvas.Translate(x, y);
        canvas.RotateDegrees(degrees);
        canvas.Scale(field);
        canvas.Translate(-side / 2, -side / 2);
        canvas.DrawRect(-QuietBorder, -QuietBorder, side * 2 + QuietBorder, side + QuietBorder, white);
        canvas.DrawPath(path, black);
        canvas.Restore();
    }

    /// <summary>Darker to the right, and noise as of a small sensor.</summary>
    private static void Light(SKBitmap bitmap, Random noise)
    {
        var pixels = bitmap.GetPixelSpan();
        for (var at = 0; at < bitmap.Width * bitmap.Height; at++)
        {
            var (light, away) = (1 - 0.4 * (at % bitmap.Width) / bitmap.Width, noise.Next(-22, 23));
            for (var part = 4 * at; part < 4 * at + 3; part++)
                pixels[part] = (byte)Math.Clamp(pixels[part] * light + away, 0, 255);
        }
    }

    /// <summary>EXIF 2.32 in little-endian TIFF: the time of taking, and how far that clock is from UTC (tags 36867 and 36881).</summary>
    private static byte[] Exif(DateTime taken, string? offset)
    {
        var tiff = new List<byte>([.. "II"u8, 42, 0, 8, 0, 0, 0]);
        void Short(int value) => tiff.AddRange([(byte)(value & 0xff), (byte)(value >> 8)]);
        void Long(int value)
        {
            Short(value & 0xffff);
            Short(value >> 16);
        }
        void Entry(int tag, int type, int count, int value)
        {
            Short(tag);
            Short(type);
            Long(count);
            Long(value);
        }
        const int exifAt = 8 + 2 + 12 + 4;
        var count = offset is null ? 1 : 2;
        var textAt = exifAt + 2 + 12 * count + 4;
        Short(1);
        Entry(34665, 4, 1, exifAt);
        Long(0);
        Short(count);
        Entry(36867, 2, 20, textAt);
        if (offset is not null)
            Entry(36881, 2, 7, textAt + 20);
        Long(0);
        tiff.AddRange(Encoding.ASCII.GetBytes(taken.ToString("yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture) + "\0"
            + (offset is null ? "" : offset + "\0")));
        byte[] body = [.. "Exif\0\0"u8, .. tiff];
        return [0xff, 0xe1, (byte)((body.Length + 2) >> 8), (byte)((body.Length + 2) & 0xff), .. body];
    }
}

using System.Buffers.Binary;
using System.Text;
using SkiaSharp;

namespace TrimOut.Papers.Tests.Photos;

/// <summary>Pictures as a telephone writes them, made by hand: four colours, and the metadata beside them.</summary>
internal static class TestPhoto
{
    private static readonly (char Name, SKColor Colour)[] Colours =
        [('R', new SKColor(220, 20, 20)), ('G', new SKColor(20, 200, 20)), ('B', new SKColor(20, 20, 220)), ('W', new SKColor(240, 240, 240))];

    /// <summary>A JPEG whose stored quarters are red, green, blue and white, from the top left by rows.</summary>
    /// <param name="wide">Its width as it is stored.</param>
    /// <param name="high">Its height as it is stored.</param>
    /// <param name="orientation">Its orientation, EXIF tag 274; null for no metadata at all.</param>
    /// <param name="taken">When it was taken, as EXIF tag 36867 writes it.</param>
    public static byte[] Jpeg(int wide = 400, int high = 300, int? orientation = null, string taken = "2026:03:12 10:20:30")
    {
        using var bitmap = new SKBitmap(wide, high);
        using (var canvas = new SKCanvas(bitmap))
        {
            for (var at = 0; at < 4; at++)
            {
                using var paint = new SKPaint { Color = Colours[at].Colour };
                canvas.DrawRect(at % 2 * wide / 2f, at / 2 * high / 2f, wide / 2f, high / 2f, paint);
            }
        }
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        var jpeg = data.ToArray();
        return orientation is not { } turned ? jpeg : [.. jpeg[..2], .. Segment(Exif(turned, taken)), .. jpeg[2..]];
    }

    /// <summary>The colours in the middle of its quarters, from the top left by rows.</summary>
    public static string Quarters(ReadOnlyMemory<byte> picture)
    {
        using var bitmap = SKBitmap.Decode(picture.ToArray());
        return string.Concat(Enumerable.Range(0, 4).Select(at =>
        {
            var seen = bitmap.GetPixel((1 + 2 * (at % 2)) * bitmap.Width / 4, (1 + 2 * (at / 2)) * bitmap.Height / 4);
            return Colours.MinBy(c => Math.Abs(c.Colour.Red - seen.Red) + Math.Abs(c.Colour.Green - seen.Green) + Math.Abs(c.Colour.Blue - seen.Blue)).Name;
        }));
    }

    private static byte[] Segment(byte[] exif)
    {
        var length = new byte[2];
        BinaryPrimitives.WriteUInt16BigEndian(length, (ushort)(exif.Length + 2));
        return [0xff, 0xe1, .. length, .. exif];
    }

    /// <summary>EXIF 2.32 in big-endian TIFF: orientation and two directories, one with the day, one with a place (60° N, 25° E).</summary>
    private static byte[] Exif(int orientation, string taken)
    {
        var tiff = new List<byte>([.. "MM"u8, 0, 42, 0, 0, 0, 8]);
        void Short(int value) => tiff.AddRange(unchecked([(byte)(value >> 8), (byte)value]));
        void Long(int value) => tiff.AddRange(unchecked([(byte)(value >> 24), (byte)(value >> 16), (byte)(value >> 8), (byte)value]));
        void Entry(int tag, int type, int count, int value)
        {
            Short(tag);
            Short(type);
            Long(count);
            if (type == 3)
            {
                Short(value);
                Short(0);
            }
            else
            {
                Long(value);
            }
        }
        const int ExifAt = 8 + 2 + 3 * 12 + 4, DayAt = ExifAt + 2 + 12 + 4, GpsAt = DayAt + 20, PlacesAt = GpsAt + 2 + 4 * 12 + 4;
        Short(3);
        Entry(274, 3, 1, orientation);
        Entry(34665, 4, 1, ExifAt);
        Entry(34853, 4, 1, GpsAt);
        Long(0);
        Short(1);
        Entry(36867, 2, 20, DayAt);
        Long(0);
        tiff.AddRange(Encoding.ASCII.GetBytes(taken.PadRight(19)[..19] + "\0"));
        Short(4);
        Entry(1, 2, 2, 'N' << 24);
        Entry(2, 5, 3, PlacesAt);
        Entry(3, 2, 2, 'E' << 24);
        Entry(4, 5, 3, PlacesAt + 24);
        Long(0);
        foreach (var degrees in (int[])[60, 25])
        {
            foreach (var part in (int[])[degrees, 0, 0])
            {
                Long(part);
                Long(1);
            }
        }
        return [.. "Exif\0\0"u8, .. tiff];
    }
}

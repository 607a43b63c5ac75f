using System.Globalization;
using System.Text.RegularExpressions;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace TrimOut.Papers.Tests.Labels;

/// <summary>Reads a code back with ZXing, from the shapes of the drawing itself, as a phone would from paper.</summary>
internal static partial class CodeReader
{
    private const int Dots = 4;
    private const int QuietBorder = 4;

    /// <summary>Paints the boxes of a path on white, four dots to a field, and has the picture decoded.</summary>
    public static string Read(string path)
    {
        var boxes = Box().Matches(path).Select(m => (X: N(m, "x"), Y: N(m, "y"), Wide: N(m, "w"))).ToList();
        Assert.Equal(path.Length, Box().Matches(path).Sum(m => m.Length));
        var side = Dots * (boxes.Max(b => b.X + b.Wide) + 2 * QuietBorder);
        var gray = new byte[side * side];
        Array.Fill(gray, (byte)255);
        foreach (var box in boxes)
        {
            for (var y = Dots * (box.Y + QuietBorder); y < Dots * (box.Y + QuietBorder + 1); y++)
                Array.Fill(gray, (byte)0, y * side + Dots * (box.X + QuietBorder), Dots * box.Wide);
        }
        var picture = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(gray, side, side, RGBLuminanceSource.BitmapFormat.Gray8)));
        return new QRCodeReader().decode(picture)?.Text ?? "(not readable)";
    }

    private static int N(Match box, string name) => int.Parse(box.Groups[name].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex("M(?<x>[0-9]+),(?<y>[0-9]+)h(?<w>[0-9]+)v1h-[0-9]+z")]
    private static partial Regex Box();
}

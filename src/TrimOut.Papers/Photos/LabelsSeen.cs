using System.Collections.Immutable;
using SkiaSharp;
using TrimOut.Core.Plans.Photos;
using TrimOut.Papers.Labels;
using ZXing;
using ZXing.Common;
using ZXing.Multi.QrCode;
using ZXing.QrCode;

namespace TrimOut.Papers.Photos;

/// <summary>Reads the codes of cable labels that are seen in a picture.</summary>
internal static class LabelsSeen
{
    private static readonly Dictionary<DecodeHintType, object> Hard = new() { [DecodeHintType.TRY_HARDER] = true };

    /// <summary>What they say, each once; codes that are no label of a cable are passed over.</summary>
    public static ImmutableArray<SeenLabel> In(SKBitmap picture)
    {
        try
        {
            var light = new RGBLuminanceSource(picture.GetPixelSpan().ToArray(), picture.Width, picture.Height, RGBLuminanceSource.BitmapFormat.RGBA32);
            var several = new QRCodeMultiReader().decodeMultiple(new BinaryBitmap(new HybridBinarizer(light)), Hard);
            var one = several is { Length: > 0 } ? null : new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(light)), Hard);
            return [.. (several ?? []).Append(one).Select(r => r is null ? null : CableEnd.Read(r.Text)).OfType<SeenLabel>().Distinct()];
        }
        catch (Exception none) when (none is ReaderException or IndexOutOfRangeException or ArgumentException or System.FormatException)
        {
            // Something that looks like a code and is none.
            return [];
        }
    }
}

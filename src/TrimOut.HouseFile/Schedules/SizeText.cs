using System.Text.RegularExpressions;
using TrimOut.Core;

namespace TrimOut.HouseFile.Schedules;

/// <summary>Width and height as one cell of a schedule has them.</summary>
/// <param name="Width">The width, as it would be typed.</param>
/// <param name="Height">The height, as it would be typed.</param>
/// <param name="Understood">How the cell was read, for the user to confirm.</param>
internal sealed record SizeText(string Width, string Height, string Understood)
{
    /// <summary>Reads a cell.</summary>
    /// <remarks>
    /// Four digits are feet and inches of the width, then of the height: 2668 is 2'-6" by 6'-8" (generic plan services; some countries' metric codes
    /// put the height first).
    /// </remarks>
    public static Result<SizeText> Read(string cell)
    {
        var text = cell.Trim();
        if (SizePatterns.Code().Match(text) is { Success: true } code)
        {
            var (width, height) = ($"{code.Groups[1]}'-{code.Groups[2]}\"", $"{code.Groups[3]}'-{code.Groups[4]}\"");
            return new SizeText(width, height, $"{text} read as {width} wide by {height} high");
        }
        var parts = SizePatterns.By().Split(text);
        if (parts.Length != 2 || parts.Any(p => p.Length == 0))
            return new Refusal($"\"{text}\" is no size. Write width by height, such as 4050, 36 x 60 or 915 x 1830 mm.");
        var (first, second) = (Lettered(parts[0]), Lettered(parts[1]));
        if (first.Letter is not null && first.Letter == second.Letter)
            return new Refusal($"\"{text}\" says the same side twice.");
        var unit = SizePatterns.Unit().Match(second.Text).Value;
        var firstText = unit.Length > 0 && SizePatterns.Bare().IsMatch(first.Text) ? first.Text + " " + unit.Trim() : first.Text;
        var (w, h) = first.Letter == 'h' || second.Letter == 'w' ? (second.Text, firstText) : (firstText, second.Text);
        return new SizeText(w, h, $"{text} read as {w} wide by {h} high");
    }

    private static (string Text, char? Letter) Lettered(string part)
    {
        var text = part.Trim();
        return text.Length > 1 && char.ToLowerInvariant(text[^1]) is 'w' or 'h'
            ? (text[..^1].Trim(), char.ToLowerInvariant(text[^1]))
            : (text, null);
    }
}

/// <summary>The patterns of sizes.</summary>
internal static partial class SizePatterns
{
    [GeneratedRegex(@"^([1-9])([0-9])([1-9])([0-9])$")]
    public static partial Regex Code();

    [GeneratedRegex(@"\s*(?:[xX×*]|\bby\b)\s*")]
    public static partial Regex By();

    [GeneratedRegex(@"\s*(?:mm|cm|m|in\.?|inch(?:es)?|ft\.?|feet|[""'″′])$", RegexOptions.IgnoreCase)]
    public static partial Regex Unit();

    /// <summary>A number, or one with a fraction written or printed, and no unit.</summary>
    [GeneratedRegex(@"^[\d\s./⁄½¼¾⅛⅜⅝⅞-]+$")]
    public static partial Regex Bare();

    [GeneratedRegex(@"^\d+,\d{1,2}(?!\d)\D*$")]
    public static partial Regex DecimalComma();

    /// <summary>Three digits behind a comma: thousands, or a decimal comma.</summary>
    [GeneratedRegex(@"^\d{1,3},\d{3}(?!\d)\D*$")]
    public static partial Regex EitherComma();
}

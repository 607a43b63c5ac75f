using System.Text.RegularExpressions;

namespace TrimOut.Screens.Frames;

/// <summary>Figures of one column with one number of decimals, so that they stand below each other.</summary>
internal static partial class Decimals
{
    /// <summary>The texts, figures with as many decimals as the one that has most of them; what is no figure stays as it is.</summary>
    public static IReadOnlyList<string> Alike(IReadOnlyList<string> texts)
    {
        var most = texts.Select(t => Figure().Match(t)).Where(m => m.Success).Select(Of).DefaultIfEmpty().Max();
        return [.. texts.Select(t => Figure().Match(t) is { Success: true } figure ? With(figure, most) : t)];
    }

    private static int Of(Match figure) => figure.Groups["part"].Length;

    private static string With(Match figure, int most)
    {
        var missing = new string('0', most - Of(figure));
        return $"{figure.Groups["whole"]}{(most == 0 ? "" : ".")}{figure.Groups["part"]}{missing}{figure.Groups["unit"]}{figure.Groups["mark"]}";
    }

    [GeneratedRegex(@"^(?<whole>[~+-]?\d+)(?:\.(?<part>\d+))?(?<unit> [A-Za-z%]+)?(?<mark>\??)$")]
    private static partial Regex Figure();
}

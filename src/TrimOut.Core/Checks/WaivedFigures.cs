using System.Text.RegularExpressions;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks;

/// <summary>Whether a waiver was given for just these figures.</summary>
internal static partial class WaivedFigures
{
    /// <summary>Whether a finding has the figures that a waiver was given for, whatever it is worded like now.</summary>
    public static bool Are(Waiver waiver, Sentence message, House house) =>
        waiver.Arguments is { } arguments ? arguments == message.Figures
        : waiver.Figures is { } said && AreIn(said, message, house);

    private const string AnyName = "\u0001";

    /// <summary>
    /// Waivers of earlier releases hold the words of their day: the same words, whatever the items in them were called, or the same figures in their
    /// order, in either units.
    /// </summary>
    private static bool AreIn(string said, Sentence message, House house)
    {
        var figures = FiguresOf(said);
        return Enum.GetValues<DisplayUnits>().Select(u => new Reader(house) { Units = u })
            .SelectMany(r => Enum.GetValues<LengthsAs>().Select(lengths => r with { Lengths = lengths }))
            .Any(now => IsSaidOf(said, message.For(now with { Names = _ => AnyName })) || (figures.Length > 0 && figures == FiguresOf(message.For(now))));
    }

    private static bool IsSaidOf(string said, string now) =>
        Regex.IsMatch(said, $@"\A{Regex.Escape(now).Replace(AnyName, ".+", StringComparison.Ordinal)}\z",
            RegexOptions.Singleline | RegexOptions.NonBacktracking);

    private static string FiguresOf(string words) => string.Join(' ', Figure().Matches(words).Select(m => m.Value));

    [GeneratedRegex(@"\d+(?:[./]\d+)*")]
    private static partial Regex Figure();
}

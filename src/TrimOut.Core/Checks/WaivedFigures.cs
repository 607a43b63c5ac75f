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

    /// <summary>Waivers of earlier releases hold the words of their day: their figures, in the order in which they stand, are held against today's in the same units.</summary>
    private static bool AreIn(string said, Sentence message, House house)
    {
        var figures = FiguresOf(said);
        return Enum.GetValues<DisplayUnits>().Select(u => message.For(new Reader(house) { Units = u })).Any(now => said == now || (figures.Length > 0 && figures == FiguresOf(now)));
    }

    private static string FiguresOf(string words) => string.Join(' ', Figure().Matches(words).Select(m => m.Value));

    [GeneratedRegex(@"\d+(?:[./]\d+)*")]
    private static partial Regex Figure();
}

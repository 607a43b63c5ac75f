using System.Globalization;
using System.Text.RegularExpressions;

namespace TrimOut.Core.Plans.InService;

/// <summary>How long a warranty runs, read out of what was typed: <c>5 years</c>, <c>two years</c>, <c>18 months</c>, <c>2 Jahre</c>.</summary>
/// <remarks>What names two terms, or another first day than the one that is noted, is not read: nobody could tell which end is meant.</remarks>
public static partial class WarrantyTerm
{
    private const int MonthsOfYear = 12;
    private const int MostMonths = 1200;

    private static readonly string[][] Numbers =
    [
        ["one", "a", "ein", "eine", "einem", "un", "una", "uno"], ["two", "zwei", "dos"], ["three", "drei", "tres"], ["four", "vier", "cuatro"],
        ["five", "f\u00fcnf", "cinco"], ["six", "sechs", "seis"], ["seven", "sieben", "siete"], ["eight", "acht", "ocho"], ["nine", "neun", "nueve"],
        ["ten", "zehn", "diez"],
    ];

    /// <summary>The months of a term; null where it can't be read, or says more than one term.</summary>
    /// <param name="typed">What was typed.</param>
    public static int? Months(string typed)
    {
        var found = Term().Matches(typed);
        // "from delivery" is another day than the one that the crew's warranty runs from.
        if (found is not [var one] || From().IsMatch(typed))
            return null;
        var word = one.Groups["count"].Value;
        var count = int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number
            : Array.FindIndex(Numbers, n => n.Contains(word, StringComparer.OrdinalIgnoreCase)) + 1;
        var months = one.Groups["years"].Success ? count * MonthsOfYear : count;
        return count is > 0 and <= MostMonths && months <= MostMonths ? months : null;
    }

    /// <summary>The last day of a warranty: the day before the one on which it would begin anew; null where its term can't be read.</summary>
    /// <param name="from">Its first day.</param>
    /// <param name="typed">Its term as it was typed.</param>
    public static DateOnly? LastDay(DateOnly from, string typed) =>
        Months(typed) is { } months && from.Year + months / MonthsOfYear < DateOnly.MaxValue.Year ? from.AddMonths(months).AddDays(-1) : null;

    [GeneratedRegex(@"\b(?:from|since|after|ab|seit|nach|desde|partir)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex From();

    [GeneratedRegex(@"(?<![\w.,])(?<count>[0-9]{1,4}|\p{L}+)[ \-]*(?:(?<years>years?|yrs?|jahren?|jahre?s?|a\u00f1os?)|"
        + @"months?|monaten?|monate?s?|mes(?:es)?)(?!\p{L})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Term();
}

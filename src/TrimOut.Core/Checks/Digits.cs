using System.Globalization;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks;

/// <summary>Figures with enough digits to show a fault.</summary>
internal static class Digits
{
    /// <summary>A figure and its limit, with two decimals or as many more as tell them apart.</summary>
    public static (Arg Figure, Arg Limit) Apart(decimal figure, decimal limit, string unit)
    {
        for (var decimals = 2; ; decimals++)
        {
            if (Print(figure, decimals) != Print(limit, decimals) || figure == limit || decimals == 9)
                return (Arg.Number(figure, unit, decimals), Arg.Number(limit, unit, decimals));
        }
    }

    private static string Print(decimal number, int decimals) =>
        number.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}

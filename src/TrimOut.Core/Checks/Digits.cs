using System.Globalization;

namespace TrimOut.Core.Checks;

/// <summary>Prints figures with enough digits to show a fault.</summary>
internal static class Digits
{
    /// <summary>A figure and its limit, with two decimals or as many more as tell them apart.</summary>
    public static (string Figure, string Limit) Apart(decimal figure, decimal limit, string unit)
    {
        for (var decimals = 2; ; decimals++)
        {
            var (a, b) = (Print(figure, decimals), Print(limit, decimals));
            if (a != b || figure == limit || decimals == 9)
                return ($"{a} {unit}", $"{b} {unit}");
        }
    }

    private static string Print(decimal number, int decimals) => number.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}

using System.Globalization;

namespace TrimOut.Core.Units;

/// <summary>Reads and prints plain numbers with a unit, whatever the culture.</summary>
public static class NumberText
{
    /// <summary>Reads a number with an optional unit behind it.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="what">What it counts, for the message: "volts".</param>
    /// <param name="least">The smallest that makes sense.</param>
    /// <param name="most">The largest that makes sense.</param>
    /// <param name="units">Units that may follow, lower case, with what each is worth; "" allows none.</param>
    public static Result<decimal> Read(string? typed, string what, decimal least, decimal most, params ReadOnlySpan<(string Name, decimal Worth)> units)
    {
        var text = (typed ?? "").Trim();
        if (text.Length == 0)
            return new Refusal($"Nothing was typed. Type {what} as a number.");
        if (text.Contains(',', StringComparison.Ordinal))
            return new Refusal("Write decimals with a point and leave out thousands marks.");
        var end = text.Length;
        while (end > 0 && !char.IsAsciiDigit(text[end - 1]) && text[end - 1] != '.')
            end--;
        var unit = text[end..].Trim().ToLowerInvariant();
        decimal? worth = null;
        foreach (var (name, value) in units)
        {
            if (name == unit)
                worth = value;
        }
        if (worth is null
            || !decimal.TryParse(text.AsSpan(0, end).Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture, out var number))
            return new Refusal($"\"{Short(text)}\" is no number of {what}.");
        if (number > 1_000_000_000m || number < -1_000_000_000m || number * worth.Value < least || number * worth.Value > most)
            return new Refusal($"{Short(text)} is out of range: {what} go from {Plain(least)} to {Plain(most)}.");
        return Math.Round(number * worth.Value, Decimals) == number * worth.Value ? number * worth.Value
            : new Refusal($"{Short(text)} has more decimals than a value is kept with: {Decimals} at the most.");
    }

    private const int Decimals = 12;

    /// <summary>A number to three decimals with its unit behind it.</summary>
    public static string Show(decimal number, string unit) => $"{number.ToString("0.###", CultureInfo.InvariantCulture)} {unit}";

    /// <summary>A number without loss.</summary>
    public static string Plain(decimal number) => number.ToString("0.############", CultureInfo.InvariantCulture);

    /// <summary>A count with what it counts: "1 change", "2 changes".</summary>
    public static string Counted(int count, string one, string? several = null) => $"{Plain(count)} {(count == 1 ? one : several ?? one + "s")}";

    private static string Short(string text) => text.Length <= 24 ? text : text[..24] + "...";
}

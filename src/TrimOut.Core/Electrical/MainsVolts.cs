using System.Globalization;

namespace TrimOut.Core.Electrical;

/// <summary>A mains voltage as it stands on a plate, such as 120 V or 100 to 240 V, 50/60 Hz.</summary>
public static class MainsVolts
{
    /// <summary>The highest voltage that a text names, in volts, above 0 and below 1000; null where it names none.</summary>
    /// <param name="text">The text of the plate.</param>
    public static decimal? Highest(string text) => text.Split(" ,;-–/()VvAaCcHhzZ~".ToCharArray(), StringSplitOptions.RemoveEmptyEntries)
        .Select(t => decimal.TryParse(t, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) ? n : 0)
        .Where(n => n is > 0 and < 1000).Select(n => (decimal?)n).Max();
}

using System.Globalization;

namespace TrimOut.Core.Units;

/// <summary>Reads and prints a time of the clock, to the minute.</summary>
public static class ClockText
{
    private const int Noon = 12;
    private const int Hours = 24;
    private const int Minutes = 60;

    /// <summary>Reads a time: <c>17:30</c>, <c>7:05</c>, <c>5:30 pm</c>, <c>7 am</c>.</summary>
    public static Result<TimeOnly> Read(string? typed)
    {
        var text = (typed ?? "").Trim().ToLowerInvariant().Replace(".", "", StringComparison.Ordinal);
        bool? afternoon = text.EndsWith("pm", StringComparison.Ordinal) ? true : text.EndsWith("am", StringComparison.Ordinal) ? false : null;
        var parts = (afternoon is null ? text : text[..^2].TrimEnd()).Split(':');
        if (parts.Length is 1 or 2 && (parts.Length == 2 || afternoon is not null)
            && TryRead(parts[0], out var hour) && TryRead(parts.Length == 2 ? parts[1] : "0", out var minute) && minute < Minutes
            && (parts.Length == 1 || parts[1].Length == 2)
            && (afternoon is null ? hour < Hours : hour is >= 1 and <= Noon))
            return new TimeOnly(afternoon is { } late ? hour % Noon + (late ? Noon : 0) : hour, minute);
        return new Refusal($"\"{Short(text)}\" is no time of the clock. Type hours and minutes, such as 17:30 or 5:30 pm.");
    }

    /// <summary>Hours and minutes of 24 hours: <c>07:05</c>.</summary>
    public static string Show(TimeOnly clock) => clock.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static bool TryRead(string digits, out int number) =>
        int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out number) && digits.Length <= 2;

    private static string Short(string text) => text.Length <= 24 ? text : text[..24] + "...";
}

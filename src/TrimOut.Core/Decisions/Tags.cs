using System.Globalization;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Window tags are unique in a house.</summary>
internal static class Tags
{
    /// <summary>Why a tag can't be given to a window; null when it can.</summary>
    public static Refusal? Refuse(House house, string tag, string? exceptWindow = null) =>
        house.FindTag(tag) is { } other && other.Id != exceptWindow
            ? new Refusal(
                $"Tag {other.Tag} is taken{(other.Room is { } room ? $" by a window in {room.FullName}" : "")}. Every window has its own tag; " +
                    $"{Next(house)} is free.")
            : null;

    /// <summary>The next free tag in the manner of the last one: W08 after W07.</summary>
    public static string Next(House house)
    {
        var next = After(house.Windows.OrderBy(w => w.Item.Place).LastOrDefault()?.Tag ?? "W00");
        while (house.FindTag(next) is not null)
            next = After(next);
        return next;
    }

    /// <summary>A name with the number at its end, or 0 where there is none, one higher: W08 after W07.</summary>
    public static string After(string last)
    {
        var digits = last.Length;
        while (digits > 0 && char.IsAsciiDigit(last[digits - 1]))
            digits--;
        var (head, width) = (last[..digits], Math.Max(1, last.Length - digits));
        var number = int.TryParse(last.AsSpan(digits), NumberStyles.None, CultureInfo.InvariantCulture, out var n) && n < int.MaxValue ? n : 0;
        return head + (number + 1).ToString(CultureInfo.InvariantCulture).PadLeft(width, '0');
    }
}

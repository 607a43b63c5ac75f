using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Pens;

/// <summary>How a value that was seen right is written wrong, and still looks like one.</summary>
public enum PenSlip
{
    /// <summary>Twice as much.</summary>
    Doubled,

    /// <summary>Two digits beside each other are changed over.</summary>
    DigitsSwapped,

    /// <summary>The number of the other side of the tape, without its unit.</summary>
    OtherUnit,

    /// <summary>What belongs to another item of the same sort.</summary>
    Neighbours,

    /// <summary>Another one of a list.</summary>
    OtherChoice,
}

/// <summary>Makes a slip of what was seen.</summary>
public static partial class PenSlips
{
    /// <summary>Its name in a table.</summary>
    public static string Full(this PenSlip slip) => slip switch
    {
        PenSlip.Doubled => "twice as much",
        PenSlip.DigitsSwapped => "two digits changed over",
        PenSlip.OtherUnit => "other side of the tape",
        PenSlip.Neighbours => "a neighbor's",
        _ => "another choice",
    };

    /// <summary>What is written in the stead of what was seen; null where this slip makes nothing else of it.</summary>
    /// <param name="slip">The slip.</param>
    /// <param name="fact">The fact.</param>
    /// <param name="seen">What was seen.</param>
    /// <param name="others">What was seen of other items of the same sort.</param>
    /// <param name="metric">Whether the house is in millimetres.</param>
    /// <param name="dice">Which digits, which neighbour, which choice.</param>
    public static string? Of(this PenSlip slip, Fact fact, string seen, IReadOnlyList<string> others, bool metric, Dice dice)
    {
        var typed = slip switch
        {
            PenSlip.Doubled when fact is Fact<Length> => LengthOf(seen) is { } length ? Millimetres(length * 2) : null,
            PenSlip.Doubled => Number(fact, seen) is { } number ? Plain(number * 2) : null,
            PenSlip.DigitsSwapped => fact is Fact<Length> || Number(fact, seen) is not null ? Swapped(seen) : null,
            PenSlip.OtherUnit when fact is Fact<Length> && !seen.EndsWith(" m", StringComparison.Ordinal) && !seen.EndsWith(" ft", StringComparison.Ordinal) =>
                LengthOf(seen) is { } length ? Plain(metric ? Math.Round(length.Inches, 2) : Math.Round(length.Millimetres)) : null,
            PenSlip.Neighbours => others.Where(o => o != seen).ToList() is { Count: > 0 } other ? dice.Of(other) : null,
            PenSlip.OtherChoice when fact.IsChoice => Choice(fact, seen, dice),
            _ => null,
        };
        return typed == seen ? null : typed;

        Length? LengthOf(string text) =>
            LengthText.Read(text, metric ? DisplayUnits.Millimetres : DisplayUnits.Inches) is { Ok: true } read && read.Value > Length.Zero ? read.Value : null;
    }

    private static string? Choice(Fact fact, string seen, Dice dice)
    {
        var other = fact.Options(House).Select(o => o.Stored).Where(o => o != seen).ToList();
        return other.Count == 0 ? null : dice.Of(other);
    }

    private static Core.Houses.House House { get; } = new TrimOut.Testing.TestJob(DisplayUnits.Inches).House;

    private static decimal? Number(Fact fact, string seen) =>
        !fact.IsChoice && fact is not (Fact<string> or Fact<ItemRef>) && decimal.TryParse(seen, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture,
            out var number) && number > 0 ? number : null;

    private static string? Swapped(string seen)
    {
        var pair = TwoDigits().Matches(seen).FirstOrDefault(m => m.Groups[1].Value != m.Groups[2].Value && m.Groups[2].Value != "0");
        return pair is null ? null : seen[..pair.Index] + pair.Groups[2].Value + pair.Groups[1].Value + seen[(pair.Index + pair.Length)..];
    }

    private static string Millimetres(Length length) => Plain(length.Millimetres) + " mm";

    private static string Plain(decimal number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<![/.\d])(\d)(\d)")]
    private static partial Regex TwoDigits();
}

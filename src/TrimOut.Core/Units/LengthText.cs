using System.Globalization;
using System.Text.RegularExpressions;

namespace TrimOut.Core.Units;

/// <summary>Reads lengths as people write them on a tape, a drawing or a box, and prints them without loss.</summary>
/// <remarks>
/// Read: <c>45 1/2</c>, <c>45-1/2</c>, <c>45.5</c>, <c>1/2"</c>, <c>3' 9 1/2"</c>, <c>3'-9 1/2"</c>, <c>62 ft</c>, <c>8 1/2 ft</c>, <c>1156 mm</c>,
/// <c>115.6 cm</c>, <c>1.2 m</c>, and the printed fraction, prime and quote characters. A bare number is in the
/// house's own unit. Refused, because they can be read two ways or are on no tape: <c>45-1</c>, <c>3'-13"</c>, <c>2'000</c>, <c>1/3</c>.
/// </remarks>
public static partial class LengthText
{
    private const string Tape = "A tape has halves, quarters, eighths, sixteenths, thirty-seconds and sixty-fourths.";

    private static readonly (string From, string To)[] Printed =
    [
        ("½", " 1/2"), ("¼", " 1/4"), ("¾", " 3/4"), ("⅛", " 1/8"), ("⅜", " 3/8"), ("⅝", " 5/8"), ("⅞", " 7/8"),
        ("′", "'"), ("’", "'"), ("‘", "'"), ("″", "\""), ("”", "\""), ("“", "\""), ("''", "\""), ("⁄", "/"),
        ("–", "-"), ("\u2212", "-"), ("\u00a0", " "), ("\u202f", " "),
    ];

    /// <summary>Reads a length.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="units">The house's units, for a bare number.</param>
    /// <param name="scale">Whether a bare number is a small or a long unit of those.</param>
    /// <returns>The length, never negative, or what is wrong with the text.</returns>
    public static Result<Length> Read(string? typed, DisplayUnits units, LengthScale scale = LengthScale.Opening)
    {
        var text = Printed.Aggregate(typed ?? "", (t, p) => t.Replace(p.From, p.To, StringComparison.Ordinal)).Trim().ToLowerInvariant();
        if (text.Length == 0)
            return new Refusal("Nothing was typed. Type a length such as 45 1/2, 3'-9 1/2\" or 1156 mm.");
        if (text.Length > 40)
            return new Refusal("That is too long for a length. Type something like 45 1/2, 3'-9 1/2\" or 1156 mm.");
        if (text[0] == '-')
            return new Refusal("A length can't be negative.");
        if (text.Contains(',', StringComparison.Ordinal))
            return new Refusal("Write decimals with a point and leave out thousands marks: 45.5, 1156.");

        if (Thousands().IsMatch(text))
            return new Refusal($"\"{typed!.Trim()}\" can be read two ways: a thousands mark, or feet and inches. Leave out the mark, as in 2000 mm, or write "
                + "2'-0\" if it is feet.");
        if (Metric().Match(text) is { Success: true } metric)
            return Number(metric, "n").Then(n => InRange(n, metric.Groups["unit"].Value switch { "m" => 1000m, "cm" => 10m, _ => 1m }));
        if (Bare().Match(text) is { Success: true } bare)
            return Number(bare, "n").Then(n => InRange(n, (units, scale) switch
            {
                (DisplayUnits.Inches, LengthScale.Opening) => 25.4m,
                (DisplayUnits.Inches, _) => 304.8m,
                (_, LengthScale.Opening) => 1m,
                _ => 1000m,
            }));
        if (FeetFraction().Match(text) is { Success: true } feet)
            return ReadFeet(feet);
        if (Imperial().Match(text) is { Success: true } imperial)
            return ReadImperial(imperial, text, units, scale);
        return Range().IsMatch(text)
            ? new Refusal($"\"{typed!.Trim()}\" may be a range or a fraction. Write 45 1/2 or 45-1/2.")
            : new Refusal($"\"{typed!.Trim()}\" is no length. Type something like 45 1/2, 3'-9 1/2\" or 1156 mm.");
    }

    /// <summary>Prints a length without loss, in the house's units where they can hold it and in millimetres or metres where they can't.</summary>
    /// <param name="length">The length.</param>
    /// <param name="units">The house's units.</param>
    /// <param name="scale">Whether openings or cable runs are spoken of.</param>
    public static string Show(this Length length, DisplayUnits units, LengthScale scale = LengthScale.Opening)
    {
        if (length < Length.Zero)
            return "-" + Show(-length, units, scale);
        if (units == DisplayUnits.Millimetres)
            return Metric(length, scale);
        if (!IsOnTape(length))
            return scale == LengthScale.Opening && IsInThousandths(length)
                ? $"{Plain((decimal)length.Nanometres / Length.NanometresPerInch)}\""
                : Metric(length, scale);
        return scale == LengthScale.Run ? FeetAndInches(length) : Inches(length) + "\"";
    }

    /// <summary>Prints a run in the house's units whatever it was typed in: to 1/16 in or 1 mm where its units can't hold it.</summary>
    /// <param name="length">The length.</param>
    /// <param name="units">The house's units.</param>
    public static string ShowRun(this Length length, DisplayUnits units) =>
        (units == DisplayUnits.Inches && IsOnTape(length) ? length : length.RoundNearest(TapeMark.Of(units))).Show(units, LengthScale.Run);

    /// <summary>Prints a length that was worked out, rounded for reading: to 1/16 in or 1 mm, or for runs to 0.1 ft or 0.1 m.</summary>
    /// <param name="length">The length.</param>
    /// <param name="units">The house's units.</param>
    /// <param name="scale">Whether openings or cable runs are spoken of.</param>
    public static string ShowRounded(this Length length, DisplayUnits units, LengthScale scale = LengthScale.Opening) => (units, scale) switch
    {
        (DisplayUnits.Inches, LengthScale.Opening) => length.RoundNearest(TapeMark.Sixteenth).Show(units),
        (DisplayUnits.Inches, _) => string.Create(CultureInfo.InvariantCulture, $"{length.Feet:0.#} ft"),
        (_, LengthScale.Opening) => length.RoundNearest(TapeMark.Millimetre).Show(units),
        _ => string.Create(CultureInfo.InvariantCulture, $"{length.Metres:0.#} m"),
    };

    /// <summary>Prints what a length may not pass, rounded down to what is read: to 1/16 in or 1 mm, or for runs to 0.1 ft or 0.1 m.</summary>
    /// <param name="length">The limit.</param>
    /// <param name="units">The house's units.</param>
    /// <param name="scale">Whether openings or cable runs are spoken of.</param>
    public static string ShowAtMost(this Length length, DisplayUnits units, LengthScale scale = LengthScale.Opening) =>
        length.RoundDown(StepRead(units, scale)).ShowRounded(units, scale);

    /// <summary>Prints what a length must reach, rounded up to what is read: to 1/16 in or 1 mm, or for runs to 0.1 ft or 0.1 m.</summary>
    /// <param name="length">What must be reached.</param>
    /// <param name="units">The house's units.</param>
    /// <param name="scale">Whether openings or cable runs are spoken of.</param>
    public static string ShowAtLeast(this Length length, DisplayUnits units, LengthScale scale = LengthScale.Opening) =>
        length.RoundUp(StepRead(units, scale)).ShowRounded(units, scale);

    private static Length StepRead(DisplayUnits units, LengthScale scale) => scale == LengthScale.Opening ? TapeMark.Of(units)
        : units == DisplayUnits.Inches ? Length.FromFeet(0.1m) : Length.FromMetres(0.1m);

    /// <summary>A part of a foot as a fraction: <c>8 1/2 ft</c>, <c>1/2'</c>.</summary>
    private static Result<Length> ReadFeet(Match match)
    {
        var whole = match.Groups["ft"].Success ? Number(match, "ft") : 0m;
        var (top, bottom) = (Number(match, "num"), Number(match, "den"));
        if (!whole.Ok || !top.Ok || !bottom.Ok)
            return new Refusal("That number is too large for a length.");
        return bottom.Value is not (2 or 4 or 8 or 16 or 32 or 64) ? new Refusal($"{top.Value}/{bottom.Value} is on no tape. {Tape}")
            : top.Value >= bottom.Value ? new Refusal($"{top.Value}/{bottom.Value} is a whole foot or more. Write the feet in front of it.")
            : InRange(whole.Value + top.Value / bottom.Value, 304.8m);
    }

    private static Result<Length> ReadImperial(Match match, string text, DisplayUnits units, LengthScale scale)
    {
        var feet = match.Groups["ft"].Success ? Number(match, "ft") : 0m;
        var inches = match.Groups["in"].Success ? Number(match, "in") : 0m;
        if (!feet.Ok || !inches.Ok)
            return new Refusal("That number is too large for a length.");
        if (!match.Groups["ft"].Success && !match.Groups["mark"].Success && (units == DisplayUnits.Millimetres || scale == LengthScale.Run))
            return new Refusal($"\"{text}\" has a fraction and no unit. Write {text}\" if it is inches.");
        if (match.Groups["ft"].Success && inches.Value >= 12)
            return new Refusal($"With feet, inches go from 0 to 11: {inches.Value} is too many.");
        var part = Length.Zero;
        if (match.Groups["num"].Success)
        {
            if (inches.Value != Math.Truncate(inches.Value))
                return new Refusal("Write the part of an inch either as a decimal or as a fraction, not both.");
            if (!long.TryParse(match.Groups["num"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var top) ||
                !long.TryParse(match.Groups["den"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var bottom) || bottom == 0)
                return new Refusal($"{match.Groups["num"].Value}/{match.Groups["den"].Value} is no fraction.");
            if (bottom is not (2 or 4 or 8 or 16 or 32 or 64))
                return new Refusal($"{top}/{bottom} is on no tape. {Tape}");
            if (top >= bottom)
                return new Refusal($"{top}/{bottom} is a whole inch or more. Write the whole inches before it.");
            part = Length.FromInches(0, top, bottom);
        }
        return InRange(feet.Value * 12 + inches.Value, 25.4m).Then<Length>(whole => whole + part);
    }

    private static Result<decimal> Number(Match match, string group) =>
        decimal.TryParse(match.Groups[group].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : new Refusal("That number is too large for a length.");

    /// <summary>The longest length of anything, all cable of a house together: 100,000 ft. What is stored in millimeters is read up to it.</summary>
    private const decimal LongestMillimetres = 30_480_000m;

    private static Result<Length> InRange(decimal number, decimal millimetresEach) =>
        number <= Math.Max(1_000_000m, LongestMillimetres / millimetresEach) ? Length.FromMillimetres(number * millimetresEach)
            : new Refusal("That number is too large for a length.");

    private static bool IsOnTape(Length length) => length.Nanometres % (Length.NanometresPerInch / 64) == 0;

    /// <summary>Whether it reads as inches with up to three decimals, as the sheet of a cable has them.</summary>
    private static bool IsInThousandths(Length length) => length.Nanometres % (Length.NanometresPerInch / 1000) == 0;

    private static string Metric(Length length, LengthScale scale) =>
        scale == LengthScale.Run ? $"{Plain(length.Metres)} m" : $"{Plain(length.Millimetres)} mm";

    private static string FeetAndInches(Length length)
    {
        var feet = length.Nanometres / (12 * Length.NanometresPerInch);
        var rest = length - Length.FromFeet(feet);
        return $"{feet}'-{(rest > Length.Zero && rest < Length.FromInches(1) ? "0 " : "")}{Inches(rest)}\"";
    }

    private static string Inches(Length length)
    {
        var sixtyFourths = length.Nanometres / (Length.NanometresPerInch / 64);
        var (whole, top) = Math.DivRem(sixtyFourths, 64);
        var bottom = 64L;
        while (top != 0 && top % 2 == 0)
            (top, bottom) = (top / 2, bottom / 2);
        return top == 0 ? $"{whole}" : whole == 0 ? $"{top}/{bottom}" : $"{whole} {top}/{bottom}";
    }

    private static string Plain(decimal number) => number.ToString("0.#########", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<n>\d*\.?\d+|\d+\.)\s*(?<unit>mm|cm|m)\.?$")]
    private static partial Regex Metric();

    [GeneratedRegex(@"^(?<n>\d*\.?\d+|\d+\.)$")]
    private static partial Regex Bare();

    private const string FeetPart = @"(?<ft>\d*\.?\d+)\s*(?:'|ft\.?|feet|foot)\s*-?\s*";
    private const string InchesPart = @"(?<in>(?>\d*\.?\d+))(?!\s*/)";
    private const string FractionPart = @"(?:(?<=\d)[\s-]+)?(?<num>\d+)\s*/\s*(?<den>\d+)";

    [GeneratedRegex($@"^(?:{FeetPart})?(?:(?:{InchesPart})?(?:{FractionPart})?\s*(?<mark>""|in\.?|inch|inches)?)?$")]
    private static partial Regex Imperial();

    [GeneratedRegex(@"^(?:(?<ft>\d+)[\s-]+)?(?<num>\d+)\s*/\s*(?<den>\d+)\s*(?:'|ft\.?|feet|foot)$")]
    private static partial Regex FeetFraction();

    /// <summary>Figures in threes behind what may be a thousands mark (Swiss usage) or a foot mark.</summary>
    [GeneratedRegex(@"^\d{1,3}(?:'\d{3})+(?:\.\d*)?\s*(?:mm|cm|m)?\.?$")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"^\d+\s*-\s*\d+$")]
    private static partial Regex Range();
}

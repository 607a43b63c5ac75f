using System.Globalization;
using System.Text.RegularExpressions;

namespace TrimOut.Core.Units;

/// <summary>Reads days as people write them. What can be two days is refused with both of them, and never guessed.</summary>
/// <remarks>
/// Read: <c>2026-03-14</c>, <c>14 mar 2026</c>, <c>mar 14 26</c>, <c>14.3.26</c> (day first, as that form is written), <c>3/14/26</c> where only one order
/// makes a day; and where it is known which day it is <c>today</c>, <c>tomorrow</c>, <c>yesterday</c>, <c>+3</c>, <c>-1</c>, <c>+2w</c>, and a weekday for
/// the next one.
/// </remarks>
public static partial class DateText
{
    private const string Form = "yyyy-MM-dd";
    private const int FewestLetters = 3;
    private const int MostDays = 3660;

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private static readonly string[] Months = Invariant.DateTimeFormat.MonthNames;

    /// <summary>Reads a day.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="today">Which day it is; null where that is not known, and what depends on it is refused.</param>
    public static Result<DateOnly> Read(string typed, DateOnly? today = null)
    {
        var text = typed.Trim();
        if (DateOnly.TryParseExact(text, Form, Invariant, DateTimeStyles.None, out var day))
            return day;
        if (FromToday(text.ToLowerInvariant(), today) is { } fromToday)
            return fromToday;
        if (Numbers().Match(text) is { Success: true } numbers)
            return InEitherOrder(text, numbers);
        if (DayMonth().Match(text) is { Success: true } dayFirst)
            return Named(text, dayFirst);
        if (MonthDay().Match(text) is { Success: true } monthFirst)
            return Named(text, monthFirst);
        return new Refusal($"\"{text}\" is no date. Type year-month-day, such as 2026-03-14{(today is null ? "" : "; or today, +3 or fri")}.");
    }

    /// <summary>Whether a line begins with what can only be meant as a day, read or not: a figure, a weekday, a month with a figure behind it.</summary>
    internal static bool BeginsADay(string line) => Beginning().Match(line.Trim()) is { Success: true } begins
        && (!begins.Groups["word"].Success || WeekdayOf(begins.Groups["word"].Value) is not null
            || (begins.Groups["n"].Success && MonthOf(begins.Groups["word"].Value) > 0));

    /// <summary>A day with its weekday, so that whoever typed it sees which one was understood.</summary>
    public static string WithWeekday(DateOnly day) => day.ToString("dddd, yyyy-MM-dd", Invariant);

    private static Result<DateOnly>? FromToday(string text, DateOnly? today)
    {
        int? days = text switch { "today" => 0, "tomorrow" => 1, "yesterday" => -1, _ => null };
        if (days is null && Shift().Match(text) is { Success: true } shift && int.TryParse(shift.Groups["n"].Value, NumberStyles.None, Invariant, out var n))
        {
            if (n > MostDays)
                return new Refusal($"\"{text}\" is too far away. Type the day itself, such as 2026-03-14.");
            days = n * (shift.Groups["week"].Success ? 7 : 1) * (shift.Groups["sign"].Value == "-" ? -1 : 1);
        }
        var weekday = days is null ? WeekdayOf(text) : null;
        if (days is null && weekday is null)
            return null;
        if (today is not { } now)
            return new Refusal($"Which day \"{text}\" is, is not known here. Type year-month-day, such as 2026-03-14.");
        if (weekday is { } wanted && now.DayOfWeek == wanted)
            return new Refusal($"Today is a {wanted}: type today, or +7 for the next one.");
        return now.AddDays(days ?? ((int)weekday!.Value - (int)now.DayOfWeek + 7) % 7);
    }

    private static DayOfWeek? WeekdayOf(string word) => word.Length < FewestLetters ? null
        : Enum.GetValues<DayOfWeek>().Where(d => d.ToString().StartsWith(word, StringComparison.OrdinalIgnoreCase)).Cast<DayOfWeek?>().FirstOrDefault();

    private static int MonthOf(string word) =>
        Array.FindIndex(Months, m => m.Length > 0 && m.StartsWith(word, StringComparison.OrdinalIgnoreCase)) + 1;

    private static Result<DateOnly> InEitherOrder(string text, Match match)
    {
        var (first, second, year) = (Number(match, "a"), Number(match, "b"), Year(match));
        // With full stops between, the day stands first wherever dates are written so.
        var dayFirst = On(year, second, first);
        var monthFirst = match.Groups["sep"].Value == "." ? null : On(year, first, second);
        return (dayFirst, monthFirst) switch
        {
            ({ } one, { } other) when one != other => new Refusal(
                $"\"{text}\" can be two days: type {monthFirst.Value.ToString(Form, Invariant)} or {dayFirst.Value.ToString(Form, Invariant)}."),
            ({ } one, _) => one,
            (_, { } other) => other,
            _ => new Refusal($"\"{text}\" is no day. Type year-month-day, such as 2026-03-14."),
        };
    }

    private static Result<DateOnly> Named(string text, Match match)
    {
        var month = MonthOf(match.Groups["month"].Value);
        return month > 0 && On(Year(match), month, Number(match, "d")) is { } day ? day
            : new Refusal($"\"{text}\" is no day. Type year-month-day, such as 2026-03-14.");
    }

    private static int Year(Match match) => Number(match, "y") is var year && match.Groups["y"].Length == 2 ? 2000 + year : year;

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, NumberStyles.None, Invariant);

    private static DateOnly? On(int year, int month, int day) =>
        year is >= 1 and <= 9999 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;

    [GeneratedRegex(@"^(?<sign>[+-])\s*(?<n>\d{1,5})\s*(?<week>w)?$")]
    private static partial Regex Shift();

    [GeneratedRegex(@"^([0-9+-]|(?<word>[A-Za-z]{3,9})\b\.?(\s*(?<n>\d))?)")]
    private static partial Regex Beginning();

    [GeneratedRegex(@"^(?<a>\d{1,2})(?<sep>[/.-])(?<b>\d{1,2})\k<sep>(?<y>\d{4}|\d{2})$")]
    private static partial Regex Numbers();

    [GeneratedRegex(@"^(?<d>\d{1,2})\.?\s*(?<month>[A-Za-z]{3,9})\.?,?\s+(?<y>\d{4}|\d{2})$")]
    private static partial Regex DayMonth();

    [GeneratedRegex(@"^(?<month>[A-Za-z]{3,9})\.?\s*(?<d>\d{1,2}),?\s+(?<y>\d{4}|\d{2})$")]
    private static partial Regex MonthDay();
}

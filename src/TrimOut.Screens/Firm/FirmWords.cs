using System.Globalization;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Firm;

/// <summary>What is said of a house among many, in a few words; the same on the screen and by the command line.</summary>
public static class FirmWords
{
    /// <summary>What is next, and who waits for whom.</summary>
    /// <param name="summary">The house.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public static string Next(HouseSummary summary, DateOnly today)
    {
        var head = summary.HeadOn(today);
        return summary.Units > 0 && summary.Finished == summary.Units && head.Next.Length == 0 ? "finished"
            : head.Next.Length > 0 ? $"next: {head.Next}" : "next: what others do first";
    }

    /// <summary>How much two laptops disagree about.</summary>
    public static string InConflict(HouseSummary summary) => $"{NumberText.Plain(summary.Conflicts.Length)} in conflict";

    /// <summary>Units that wait for somebody.</summary>
    public static string Waiting(UnitsWaiting waiting) => $"{NumberText.Plain(waiting.Units)} for {Whom(waiting.For)}";

    /// <summary>Open stops, phase by phase.</summary>
    public static IEnumerable<string> Stops(HouseSummary summary) =>
        PhaseNames.All.Where(p => summary.Phases[(int)p].Stops > 0).Select(p => $"{p.Full()}: {NumberText.Counted(summary.Phases[(int)p].Stops, "stop")}");

    /// <summary>What is due, with its day, and whether that is past.</summary>
    public static string Due(SummedDay due, DateOnly today) => $"{(due.On is { } on ? Iso(on) : "now:")} {due.InWords}{(due.On < today ? " (late)" : "")}";

    /// <summary>What is due, and of a visit where somebody who is expected at it is expected too.</summary>
    /// <param name="house">The house.</param>
    /// <param name="due">What is due in it.</param>
    /// <param name="today">The day on which it is looked at.</param>
    /// <param name="firm">Who is expected where over all houses.</param>
    public static string Due(HouseSummary house, SummedDay due, DateOnly today, FirmVisits firm)
    {
        var also = due.Visit is not { } visit ? [] : visit.Expected.SelectMany(who => firm.Beside(house, visit, who)).Select(a => Also(a, visit)).ToList();
        return also.Count == 0 ? Due(due, today) : $"{Due(due, today)} ({string.Join(", ", also)})";
    }

    private static string Also(AlsoExpected also, SummedVisit visit) => string.Join(' ', new[]
    {
        also.Who, also.AtTheSameTime ? "AT THE SAME TIME at" : "also at", also.House, also.On == visit.On ? "" : Iso(also.On),
        also.From?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "",
    }.Where(w => w.Length > 0));

    /// <summary>Boxes that were ordered and are not here, by the day on which they are expected.</summary>
    public static IEnumerable<string> OrdersOut(HouseSummary summary) => summary.Boxes.Where(b => b is { Here: false, Reorder: false })
        .GroupBy(b => b.Expected).OrderBy(g => g.Key is null).ThenBy(g => g.Key)
        .Select(g => $"{(g.Key is { } day ? Iso(day) : "no day")}: {string.Join(", ", g.Select(Out))}");

    private static string Out(SummedBox box) => box switch
    {
        { TooLate: { } late } => $"{box.Tag} (comes after {(late.Visit.Length == 0 ? "it must be here" : late.Visit)} {Iso(late.Needed)})",
        { Ordered: false } => $"{box.Tag} (no order day)",
        _ => box.Tag,
    };

    /// <summary>A box that did not come, or came wrong.</summary>
    public static string Box(SummedBox box) => box is { Here: true, Reorder: false } ? $"{box.Tag} has the box of another unit"
        : !box.Reorder ? $"{box.Tag} expected {Iso(box.Expected!.Value)}, not here"
        : box.Here ? $"{box.Tag} came wrong, to be reordered" : $"{box.Tag} did not arrive, to be reordered";

    /// <summary>A day as year-month-day.</summary>
    public static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Whom(WaitsFor whom) => whom switch
    {
        WaitsFor.Paint => "paint",
        WaitsFor.Electrician => "electrician",
        WaitsFor.Maker => "maker",
        WaitsFor.Owner => "owner",
        _ => "the crew",
    };
}

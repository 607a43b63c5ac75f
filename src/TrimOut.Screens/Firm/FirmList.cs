using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Plans.InService;

namespace TrimOut.Screens.Firm;

/// <summary>Which houses of many are listed, and what is said of each.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Id">What it is called on the command line.</param>
/// <param name="Of">What is said of a house on a day, beside who is expected where over all houses; nothing where it is not in the list.</param>
public sealed record FirmList(string Name, string Id, Func<HouseSummary, DateOnly, FirmVisits, IEnumerable<string>> Of)
{
    /// <summary>What the list is ordered by, the least first: what presses most stands on top. Null where it is in the order of files.</summary>
    public Func<HouseSummary, DateOnly, long>? First { get; private init; }

    /// <summary>The days of a week.</summary>
    public const int Week = 7;

    /// <summary>What is late for more days than this stands behind what is pressing now; our own choice, no published source.</summary>
    private const int LongLate = 14;

    /// <summary>All houses with what is next, and before it whether something is in conflict.</summary>
    public static FirmList Everything { get; } = new("All", "all", (s, today, _) =>
        [.. s.Conflicts.IsEmpty ? Array.Empty<string>() : [FirmWords.InConflict(s)], FirmWords.Next(s, today)]);

    /// <summary>Every list.</summary>
    public static IReadOnlyList<FirmList> All { get; } =
    [
        Everything,
        new("Stops", "stops", (s, _, _) => FirmWords.Stops(s)) { First = (s, _) => -s.Stops },
        new("Conflicts", "conflicts", (s, _, _) => s.Conflicts),
        new("Waiting", "waiting", (s, today, _) => s.HeadOn(today).Waiting.Select(FirmWords.Waiting)),
        new("Due this week", "due", (s, today, firm) => Due(s, today).Select(d => FirmWords.Due(s, d, today, firm)))
        {
            First = (s, today) => Due(s, today).FirstOrDefault() is { } due ? Day(due.On, due.On < today.AddDays(-LongLate)) : long.MaxValue,
        },
        new("Orders", "orders", (s, _, _) => FirmWords.OrdersOut(s))
        {
            First = (s, _) => s.Boxes.Where(b => b is { Here: false, Reorder: false }).Select(b => b.Expected).Min() is { } day ? day.DayNumber : long.MaxValue,
        },
        new("Not arrived", "boxes", (s, today, _) => s.NotArrived(today).Select(FirmWords.Box))
        {
            First = (s, today) => s.NotArrived(today).Select(b => b.Expected).Min() is { } day ? day.DayNumber : long.MaxValue,
        },
        new("Warranties", "warranties", (s, today, _) => Ends(s, today).Select(d => FirmWords.Due(d, today)))
        {
            First = (s, today) => Ends(s, today).Select(d => d.On).Min() is { } day ? day.DayNumber : long.MaxValue,
        },
    ];

    private static IEnumerable<SummedDay> Due(HouseSummary house, DateOnly today) => house.Due(today, Week).OrderBy(d => d.On < today.AddDays(-LongLate));

    private static IEnumerable<SummedDay> Ends(HouseSummary house, DateOnly today) => house.WarrantiesEnding(today, DueInService.WarrantyDays);

    /// <summary>What is to be done now stands before every day, what is long late behind all.</summary>
    private static long Day(DateOnly? on, bool longLate) => (on?.DayNumber ?? 0) + (longLate ? int.MaxValue : 0L);
}

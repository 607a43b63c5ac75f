using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Plans.InService;

namespace TrimOut.Screens.Firm;

/// <summary>Which houses of many are listed, and what is said of each.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Id">What it is called on the command line.</param>
/// <param name="Of">What is said of a house on a day, beside who is expected where over all houses; nothing where it is not in the list.</param>
public sealed record FirmList(string Name, string Id, Func<HouseSummary, DateOnly, FirmVisits, IEnumerable<string>> Of)
{
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
        new("Stops", "stops", (s, _, _) => FirmWords.Stops(s)),
        new("Conflicts", "conflicts", (s, _, _) => s.Conflicts),
        new("Waiting", "waiting", (s, today, _) => s.HeadOn(today).Waiting.Select(FirmWords.Waiting)),
        new("Due this week", "due", (s, today, firm) => s.Due(today, Week).OrderBy(d => d.On < today.AddDays(-LongLate))
            .Select(d => FirmWords.Due(s, d, today, firm))),
        new("Orders", "orders", (s, _, _) => FirmWords.OrdersOut(s)),
        new("Not arrived", "boxes", (s, today, _) => s.NotArrived(today).Select(FirmWords.Box)),
        new("Warranties", "warranties", (s, today, _) => s.WarrantiesEnding(today, DueInService.WarrantyDays).Select(d => FirmWords.Due(d, today))),
    ];
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.InService;

/// <summary>Something of a house in service that is due on a day that is asked for: a warranty that runs out, a yearly visit, steps that wait.</summary>
/// <param name="Say">What it is.</param>
/// <param name="Pressing">Whether it is to be said when the house is opened.</param>
public sealed record DueInService(Sentence Say, bool Pressing)
{
    /// <summary>
    /// So many days ahead the end of a warranty is said when a house is opened: time for a visit and a claim; common practice, no published source.
    /// </summary>
    public const int WarrantyDays = 90;

    /// <summary>So many days ahead a yearly visit is said; common practice, no published source.</summary>
    public const int VisitDays = 30;

    /// <summary>Whether its day is over, and nothing comes of it any more.</summary>
    public bool IsOver { get; init; }

    private static readonly Message CrewEnds = new("The crew's warranty ends on {0} (days left: {1}).");
    private static readonly Message MakerEnds = new("The maker's warranty of {0} ends on {1} (days left: {2}).");
    private static readonly Message CrewEnded = new("The crew's warranty ended on {0}.");
    private static readonly Message MakerEnded = new("The maker's warranty of {0} ended on {1}.");
    private static readonly Message Unread =
        new("When the warranty of {0} ends can't be read from \"{1}\": write how long in years or months, such as 5 years.");
    private static readonly Message CrewUnread =
        new("When the crew's warranty ends can't be read from \"{0}\": write how long in years or months, such as 2 years.");
    private static readonly Message VisitDue = new("The yearly visit is due on {0}.");
    private static readonly Message VisitLate = new("The yearly visit was due on {0}.");
    private static readonly Message WaitsForMaker = new("{0}: waits for the maker.");
    private static readonly Message WaitsForClaim = new("{0}: waits for the maker, claim {1}.");
    private static readonly Message NotMended = new("{0}: not repaired, and claim {1} came to {2}.");
    private static readonly Message Waits = new("{0}, to be done again: {1}.");

    /// <summary>All of a house: what failed and what waits first, then the visit, then the warranties, the next to end first.</summary>
    /// <param name="house">The house.</param>
    /// <param name="today">The day on which it is looked at.</param>
    public static IEnumerable<DueInService> Of(House house, DateOnly today) =>
        [.. Failures(house), .. Waiting(house), .. Visit(house, today), .. Warranties(house, today)];

    /// <summary>The last day of the crew's warranty; null where it is not known.</summary>
    public static DateOnly? CrewUntil(House house) => house.Job.Get(HouseFacts.WarrantyTerm) is { } term ? Until(house, term) : null;

    /// <summary>The last day of the maker's warranty of a kind, reckoned from the day of the crew's; null where it is not known.</summary>
    public static DateOnly? MakerUntil(House house, Item kind) => kind.Get(CoveringKindFacts.WarrantyTerm) is { } term ? Until(house, term) : null;

    /// <summary>The day of the next yearly visit: a year after the last one, or after the acceptance; null before that.</summary>
    /// <param name="house">The house.</param>
    /// <param name="today">The day on which it is looked at: a visit whose day is still to come was not made.</param>
    public static DateOnly? YearlyVisitOn(House house, DateOnly today) =>
        YearlyVisits(house).Where(v => v.From is null || v.From <= today).Select(v => (DateOnly?)v.On).Max();

    /// <summary>The days on which yearly visits are due: a year after the acceptance and after each one that was made. Nothing before the acceptance.</summary>
    /// <param name="house">The house.</param>
    /// <returns>
    /// Each with the day from which on it is so; null for that of the acceptance. What would lie past the last day of the calendar is left out.
    /// </returns>
    public static IEnumerable<(DateOnly? From, DateOnly On)> YearlyVisits(House house) => house.Job.Get(HouseFacts.AcceptedOn) is not { } accepted ? []
        : house.Services.Where(s => s.Kind == ServiceKind.YearlyVisit && s.On is not null).Select(s => (From: s.On, After: s.On!.Value))
            .Prepend((From: null, After: accepted)).Where(v => v.After.Year < DateOnly.MaxValue.Year).Select(v => (v.From, v.After.AddYears(1)));

    private static DateOnly? Until(House house, string term) => From(house) is { } from ? WarrantyTerm.LastDay(from, term) : null;

    private static DateOnly? From(House house) => house.Job.Get(HouseFacts.WarrantyFrom) ?? house.Job.Get(HouseFacts.AcceptedOn);

    /// <summary>What failed and was neither replaced nor repaired since, the first to fail first.</summary>
    public static IEnumerable<DueInService> Failures(House house) => house.Services.Where(s => s.IsOpenFailure).OrderBy(s => s.On ?? DateOnly.MaxValue)
        .Select(s => new DueInService(s.Claim is not { } claim ? WaitsForMaker.With(Arg.Name(s))
            : s.WaitsForMaker ? WaitsForClaim.With(Arg.Name(s), Arg.Typed(claim))
            : NotMended.With(Arg.Name(s), Arg.Typed(claim), Arg.Value(ServiceFacts.Outcome, s.Outcome!.Value)), Pressing: true));

    private static IEnumerable<DueInService> Waiting(House house) => AskedAgain.Waiting(house).GroupBy(w => w.Since.Id)
        .Select(w => new DueInService(Waits.With(Arg.Name(w.First().Since), Arg.All(w.Select(s => s.Step).Distinct().Select(Arg.Label))), Pressing: true));

    private static IEnumerable<DueInService> Visit(House house, DateOnly today)
    {
        if (YearlyVisitOn(house, today) is not { } due)
            yield break;
        if (due <= today.AddDays(VisitDays))
            yield return new DueInService((due < today ? VisitLate : VisitDue).With(Day(due)), Pressing: true);
    }

    private static IEnumerable<DueInService> Warranties(House house, DateOnly today)
    {
        var ends = new List<(DateOnly On, DueInService Due)>();
        var unread = new List<DueInService>();
        if (house.Job.Get(HouseFacts.WarrantyTerm) is { } crew && From(house) is not null)
        {
            if (CrewUntil(house) is { } on)
                ends.Add((on, End(on, today, left => CrewEnds.With(Day(on), left), CrewEnded.With(Day(on)))));
            else
                unread.Add(new DueInService(CrewUnread.With(Arg.Typed(crew)), Pressing: false));
        }
        foreach (var kind in house.Units.Select(u => u.Kind?.Item).OfType<Item>().DistinctBy(k => k.Id))
        {
            if (kind.Get(CoveringKindFacts.WarrantyTerm) is not { } maker || From(house) is null)
                continue;
            if (MakerUntil(house, kind) is { } on)
                ends.Add((on, End(on, today, left => MakerEnds.With(Arg.Name(kind), Day(on), left), MakerEnded.With(Arg.Name(kind), Day(on)))));
            else
                unread.Add(new DueInService(Unread.With(Arg.Name(kind), Arg.Typed(maker)), Pressing: false));
        }
        return ends.OrderBy(e => e.On).Select(e => e.Due).Concat(unread);
    }

    private static DueInService End(DateOnly on, DateOnly today, Func<int, Sentence> ends, Sentence ended) => on < today
        ? new DueInService(ended, Pressing: false) { IsOver = true }
        : new DueInService(ends(on.DayNumber - today.DayNumber), on.DayNumber - today.DayNumber <= WarrantyDays);

    private static Arg Day(DateOnly day) => Arg.Value(ServiceFacts.On, day);
}

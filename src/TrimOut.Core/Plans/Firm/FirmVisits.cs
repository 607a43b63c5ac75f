using TrimOut.Core.Plans.Visits;

namespace TrimOut.Core.Plans.Firm;

/// <summary>Who is expected where over all houses, so that nobody is promised twice unseen. People are the same where houses call them the same.</summary>
public sealed class FirmVisits
{
    private readonly ILookup<string, (HouseSummary House, SummedVisit Visit)> _of;

    private FirmVisits(ILookup<string, (HouseSummary House, SummedVisit Visit)> of) => _of = of;

    /// <summary>The visits of houses that have a day.</summary>
    /// <param name="houses">Each house once.</param>
    public static FirmVisits Of(IEnumerable<HouseSummary> houses) => new(houses
        .SelectMany(h => h.Visits.Where(v => v.On is not null).SelectMany(v => v.Expected.Distinct(SameName.Comparer).Select(who => (who, House: h, Visit: v))))
        .ToLookup(v => v.who, v => (v.House, v.Visit), SameName.Comparer));

    /// <summary>Where somebody who is expected at a visit is expected too: on that day in other houses, and at the same time wherever that is.</summary>
    /// <param name="house">The house of the visit.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="who">Who is expected.</param>
    public IEnumerable<AlsoExpected> Beside(HouseSummary house, SummedVisit visit, string who) =>
        from other in _of[who]
        where !ReferenceEquals(other.Visit, visit)
        let same = TimeOf(other.Visit).IsAtTheTimeOf(TimeOf(visit))
        where same || (other.Visit.On == visit.On && !ReferenceEquals(other.House, house))
        orderby other.Visit.On, other.Visit.From
        select new AlsoExpected(who, other.House.Name, other.Visit.On!.Value, other.Visit.From, same);

    private static VisitTime TimeOf(SummedVisit visit) => new(visit.On, visit.From, visit.Lasts);
}

/// <summary>Where somebody is expected too.</summary>
/// <param name="Who">Who.</param>
/// <param name="House">The house.</param>
/// <param name="On">The day.</param>
/// <param name="From">When it begins there, by the clocks of that house; null for all day.</param>
/// <param name="AtTheSameTime">Whether the two are at the same time.</param>
public sealed record AlsoExpected(string Who, string House, DateOnly On, TimeOnly? From, bool AtTheSameTime);

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Plans.Visits;

/// <summary>Somebody who is expected at two planned visits of a house at the same time.</summary>
/// <param name="Who">Who.</param>
/// <param name="Visit">The one visit.</param>
/// <param name="Other">The other one.</param>
public sealed record TwoAtOnce(Contact Who, Visit Visit, Visit Other)
{
    /// <summary>
    /// Who is expected elsewhere at the time of each visit, by its id; nobody where it is not planned, or says no hour. Worked out at once for all visits, for
    /// each is held against all others.
    /// </summary>
    /// <param name="house">The house.</param>
    public static ILookup<string, TwoAtOnce> ByVisit(House house)
    {
        var timed = house.Visits.Where(v => v.State == VisitState.Planned).Select(v => (Visit: v, Time: VisitTime.Of(v)))
            .Where(v => v.Time is { On: not null, From: not null }).ToList();
        return (from one in timed
                from other in timed
                where other.Visit.Id != one.Visit.Id && other.Time.IsAtTheTimeOf(one.Time)
                from who in one.Visit.Expected.IntersectBy(other.Visit.Expected.Select(c => c.Id), c => c.Id)
                select new TwoAtOnce(who, one.Visit, other.Visit)).ToLookup(t => t.Visit.Id);
    }

    /// <summary>The same of all visits of a house, each two once, in the order in which they begin.</summary>
    /// <param name="house">The house.</param>
    public static IEnumerable<TwoAtOnce> Of(House house) => ByVisit(house).SelectMany(t => t)
        .Where(t => Begins(t.Visit).CompareTo(Begins(t.Other)) < 0)
        .OrderBy(t => t.Visit.On).ThenBy(t => VisitTime.Of(t.Visit).From);

    /// <summary>Of two that begin together one is the first all the same.</summary>
    private static (DateOnly? On, TimeOnly? From, int Place) Begins(Visit visit) => (visit.On, VisitTime.Of(visit).From, visit.Item.Place);
}

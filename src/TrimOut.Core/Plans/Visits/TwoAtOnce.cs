using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Plans.Visits;

/// <summary>Somebody who is expected at two planned visits of a house at the same time.</summary>
/// <param name="Who">Who.</param>
/// <param name="Visit">The one visit.</param>
/// <param name="Other">The other one.</param>
public sealed record TwoAtOnce(Contact Who, Visit Visit, Visit Other)
{
    /// <summary>Who is expected elsewhere at the time of a visit; nobody where it is not planned, or says no hour.</summary>
    /// <param name="visit">The visit.</param>
    public static IEnumerable<TwoAtOnce> Of(Visit visit)
    {
        var time = VisitTime.Of(visit);
        return visit.State != VisitState.Planned || time is not { On: not null, From: not null } ? []
            : from other in visit.House.Visits
              where other.Id != visit.Id && other.State == VisitState.Planned && VisitTime.Of(other).IsAtTheTimeOf(time)
              from who in visit.Expected.IntersectBy(other.Expected.Select(c => c.Id), c => c.Id)
              select new TwoAtOnce(who, visit, other);
    }

    /// <summary>The same of all visits of a house, each two once, in the order in which they begin.</summary>
    /// <param name="house">The house.</param>
    public static IEnumerable<TwoAtOnce> Of(House house) => house.Visits.SelectMany(Of)
        .Where(t => Begins(t.Visit).CompareTo(Begins(t.Other)) < 0)
        .OrderBy(t => t.Visit.On).ThenBy(t => VisitTime.Of(t.Visit).From);

    /// <summary>Of two that begin together one is the first all the same.</summary>
    private static (DateOnly? On, TimeOnly? From, int Place) Begins(Visit visit) => (visit.On, VisitTime.Of(visit).From, visit.Item.Place);
}

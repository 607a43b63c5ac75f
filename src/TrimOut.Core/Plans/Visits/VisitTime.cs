using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Plans.Visits;

/// <summary>When a visit is, by the clocks of its house.</summary>
/// <param name="On">Its day; null while none is agreed.</param>
/// <param name="From">When it begins; null for all day.</param>
/// <param name="Lasts">Hours that it is to last; null where nobody said.</param>
internal readonly record struct VisitTime(DateOnly? On, TimeOnly? From, decimal? Lasts)
{
    /// <summary>When a visit is.</summary>
    public static VisitTime Of(Visit visit) => new(visit.On, visit.Item.Get(VisitFacts.From), visit.Item.Get(VisitFacts.Lasts));

    /// <summary>Whether nobody can be at both from beginning to end.</summary>
    /// <param name="other">When the other one is.</param>
    /// <remarks>
    /// Only what is written speaks: a visit that is all day says no hour at which somebody must be there, and of one that lasts nobody knows how long only its
    /// beginning counts. One that begins when the other ends is none at the same time (common practice, no published source).
    /// </remarks>
    public bool IsAtTheTimeOf(VisitTime other) => (Stretch, other.Stretch) is ({ } mine, { } others)
        && (mine.From == others.From || (mine.From < others.To && others.From < mine.To));

    /// <summary>From when until when, in ticks; null where no hour is known.</summary>
    private (long From, long To)? Stretch => (On, From) is ({ } on, { } from) && on.ToDateTime(from).Ticks is var begins
        ? (begins, begins + (long)((Lasts ?? 0) * TimeSpan.TicksPerHour)) : null;
}

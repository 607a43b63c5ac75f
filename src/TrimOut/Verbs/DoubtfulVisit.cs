using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Visits;

namespace TrimOut.Verbs;

/// <summary>A planned visit that can't take place as it is planned.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Why">What speaks against it, in a sentence.</param>
internal sealed record DoubtfulVisit(Visit Visit, string Why)
{
    /// <summary>All of a house, in the order of its visits: what speaks against their days, then who is expected at two of them at once.</summary>
    public static IEnumerable<DoubtfulVisit> Of(House house) =>
        house.Visits.SelectMany(v => VisitDoubt.Of(v).Select(d => new DoubtfulVisit(v, d.In(house))))
            .Concat(TwoAtOnce.Of(house).Select(t => new DoubtfulVisit(t.Visit,
                $"{t.Who.Name} is expected at the same time at {t.Other.Name}, {t.Other.Show(VisitFacts.From)}.")));
}

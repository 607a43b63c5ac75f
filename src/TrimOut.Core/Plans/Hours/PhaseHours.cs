using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Plans.Hours;

/// <summary>Where the hours of a phase are from.</summary>
public enum HoursFrom
{
    /// <summary>Nobody typed any, and no marks show any.</summary>
    Nothing,

    /// <summary>Typed for the phase.</summary>
    Typed,

    /// <summary>Typed for its visits.</summary>
    Visits,

    /// <summary>Measured by marks: at least so many.</summary>
    Marks,
}

/// <summary>What a phase of a house took, in hours of all people together.</summary>
/// <param name="Phase">The phase.</param>
/// <param name="Typed">As somebody typed it for the phase; null where nobody did.</param>
/// <param name="OfVisits">As it was typed for the visits of the phase, together; null where nobody did.</param>
/// <param name="Marked">As the marks show it, at the least; 0 where they show nothing.</param>
/// <param name="Through">How many units are through the phase.</param>
/// <param name="Units">How many units go through it.</param>
public sealed record PhaseHours(Phase Phase, decimal? Typed, decimal? OfVisits, decimal Marked, int Through, int Units)
{
    /// <summary>The hours that count: those typed for the phase, else those of its visits, else those by the marks; null where there are none.</summary>
    public decimal? Counted => Typed ?? OfVisits ?? (Marked > 0 ? Marked : null);

    /// <summary>Where the hours that count are from.</summary>
    public HoursFrom From =>
        Typed is not null ? HoursFrom.Typed : OfVisits is not null ? HoursFrom.Visits : Marked > 0 ? HoursFrom.Marks : HoursFrom.Nothing;

    /// <summary>How many visits of the phase have no hours, those that were called off left out.</summary>
    public int VisitsWithout { get; init; }

    /// <summary>Whether it took no less, and perhaps more: by the marks, or where the hours of some of its visits are not there.</summary>
    public bool IsAtLeast => From == HoursFrom.Marks || IsOfSomeVisits;

    /// <summary>Whether the hours that count are those of some of its visits alone.</summary>
    public bool IsOfSomeVisits => From == HoursFrom.Visits && VisitsWithout > 0;

    /// <summary>Whether all units that go through the phase are through it: then its hours are those of a whole house.</summary>
    public bool IsOver => Units > 0 && Through == Units;

    /// <summary>Hours for each unit that is through the phase; null while none is, or no hours are known.</summary>
    public decimal? PerUnit => Through > 0 ? Counted / Through : null;

    /// <summary>The hours of every phase of a house, in their order.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="steps">The list of steps; this program's where none is given.</param>
    public static ImmutableArray<PhaseHours> Of(HouseLog log, StepList? steps = null)
    {
        var (house, marked) = (log.House, MarkedHours.Of(log));
        return
        [
            .. PhaseNames.All.Select(phase =>
            {
                var progress = house.Units.Select(u => (Unit: u, Of: Progress.Of(u, phase, steps))).Where(p => p.Of.Total > 0).ToList();
                var all = house.Visits.Where(v => v.Phase == phase && v.State != VisitState.CalledOff).Select(v => v.Item.Get(VisitFacts.Worked)).ToList();
                var visits = all.OfType<decimal>().ToList();
                return new PhaseHours(phase, house.Job.Get(HouseFacts.HoursOf(phase)), visits.Count == 0 ? null : visits.Sum(),
                    InHours(marked.Where(m => m.Key.Phase == phase).Aggregate(TimeSpan.Zero, (sum, m) => sum + m.Value)),
                    progress.Count(p => p.Of.Complete || WasThrough(p.Unit, phase)), progress.Count)
                {
                    VisitsWithout = all.Count - visits.Count,
                };
            }),
        ];
    }

    /// <summary>Whether all that is open of a phase is asked again since something was replaced: what it took, it took.</summary>
    private static bool WasThrough(Unit unit, Phase phase) =>
        StepList.Of(phase, unit).All(s => unit.MarkOf(s) is not null || AskedAgain.Since(unit, s) is not null);

    /// <summary>What the marks show for one unit, phase by phase, in hours; phases in which they show nothing are left out.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="unit">The unit.</param>
    public static IEnumerable<(Phase Phase, decimal Hours)> ByMarks(HouseLog log, Unit unit) => ByMarks(MarkedHours.Of(log), unit);

    /// <summary>The same of what was worked out already.</summary>
    public static IEnumerable<(Phase Phase, decimal Hours)> ByMarks(IReadOnlyDictionary<(Phase Phase, string Item), TimeSpan> marked, Unit unit) =>
        marked.Where(m => m.Key.Item == unit.Id).OrderBy(m => m.Key.Phase).Select(m => (m.Key.Phase, InHours(m.Value)));

    private static decimal InHours(TimeSpan time) => (decimal)time.Ticks / TimeSpan.TicksPerHour;
}

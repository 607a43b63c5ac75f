using TrimOut.Core.History;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Plans.Hours;

/// <summary>The time that lies between marks of steps: at least so much was worked.</summary>
/// <remarks>
/// Two marks of one person that follow each other on one day and in one phase have work between them, which goes to what was marked second. What led up to
/// the first mark is not seen, and a pause is none: 29 CFR 785.18 and 785.19 (from memory) count rest of up to about 20 minutes as work, and 30 minutes or
/// more as a meal. What is marked in the evening for the whole day leaves next to nothing: so it says "at least".
/// </remarks>
public static class MarkedHours
{
    /// <summary>A gap as long as this, or longer, is no work.</summary>
    public static readonly TimeSpan Pause = TimeSpan.FromMinutes(30);

    /// <summary>The time by phase and by what was marked: units, panels, the house.</summary>
    /// <param name="log">The house with its history. What was undone, and what was not needed, is no work.</param>
    public static IReadOnlyDictionary<(Phase Phase, string Item), TimeSpan> Of(HouseLog log)
    {
        var worked = new Dictionary<(Phase, string), TimeSpan>();
        foreach (var day in Marks(log).GroupBy(m => (m.By, Day: DateOnly.FromDateTime(m.At.DateTime))))
        {
            Mark? before = null;
            foreach (var mark in day.OrderBy(m => m.At))
            {
                if (before is { } last && last.Phase == mark.Phase && mark.At - last.At is var gap && gap < Pause)
                    worked[(mark.Phase, mark.Item)] = worked.GetValueOrDefault((mark.Phase, mark.Item)) + gap;
                before = mark;
            }
        }
        return worked;
    }

    private static IEnumerable<Mark> Marks(HouseLog log)
    {
        var phases = StepList.All.ToDictionary(s => s.Field, s => s.Phase, StringComparer.Ordinal);
        return from change in log.Changes
               where log.IsInForce(change.Id)
               from put in change.Edits.OfType<Edit.Put>()
               where put.Value is not null && phases.ContainsKey(put.Field) && StepMark.Read(put.Value) is { Ok: true, Value.NotNeededBecause: null }
               select new Mark(change.By, change.SaidAt, phases[put.Field], put.Item);
    }

    private readonly record struct Mark(string By, DateTimeOffset At, Phase Phase, string Item);
}

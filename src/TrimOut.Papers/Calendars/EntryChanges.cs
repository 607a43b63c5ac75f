using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Calendars;

/// <summary>How often the entries of a house's visits in a calendar were changed, undos counted too, and when last: a calendar takes the later one.</summary>
internal sealed class EntryChanges
{
    /// <summary>Details of the house that stand in each entry.</summary>
    private static readonly string[] OfTheHouse = [HouseFacts.Name.Name, HouseFacts.Address.Name, HouseFacts.TimeZone.Name];

    private readonly Dictionary<string, (int Times, DateTimeOffset Last)> _of = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Visit> _gone = new(StringComparer.Ordinal);

    public EntryChanges(HouseLog log)
    {
        var (visits, touches) = (new HashSet<string>(StringComparer.Ordinal), new Dictionary<ChangeId, HashSet<string>>());
        var root = new JobItself(log.House).Item.Id;
        for (var at = 0; at < log.Changes.Count; at++)
        {
            var change = log.Changes[at];
            visits.UnionWith(change.Edits.OfType<Edit.Add>().Where(a => a.Kind == ItemKind.Visit).Select(a => a.Item));
            var touched = touches[change.Id] = [.. change.Edits.OfType<Edit.Put>().Select(p => p.Item).Where(visits.Contains)];
            if (change.Edits.OfType<Edit.Put>().Any(p => p.Item == root && OfTheHouse.Contains(p.Field)))
                touched.UnionWith(visits);
            foreach (var undone in change.Edits.OfType<Edit.Undo>().Where(u => touches.ContainsKey(u.Of)))
            {
                touched.UnionWith(touches[undone.Of]);
                var before = log.At(at).Visits.Where(v => touched.Contains(v.Id) && log.House.Find(v.Id) is null);
                foreach (var visit in before)
                    _gone[visit.Id] = visit;
            }
            foreach (var visit in touched)
                _of[visit] = _of.TryGetValue(visit, out var was) ? (was.Times + 1, was.Last > change.SaidAt ? was.Last : change.SaidAt) : (0, change.SaidAt);
        }
    }

    /// <summary>Visits that were taken back whole: a calendar that took one in still has it.</summary>
    public IEnumerable<Visit> Gone => _gone.Values;

    /// <summary>How often an entry was changed after it was made, and when it was changed last.</summary>
    public (int Times, DateTimeOffset Last) Of(Visit visit) => _of[visit.Id];
}

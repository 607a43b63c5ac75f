using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Figures;

/// <summary>What the checks worked out, whether the rule holds or not, with the facts that they read for it.</summary>
internal static class CheckFigures
{
    /// <summary>Of a unit, its window and its home run.</summary>
    public static IEnumerable<Figure> Of(Unit unit) => Of(unit.House, unit, unit.Window, unit.Run);

    /// <summary>Of these subjects.</summary>
    public static IEnumerable<Figure> Of(House house, params Subject?[] subjects)
    {
        var ids = subjects.OfType<Subject>().Select(s => s.Id).ToHashSet();
        // A run is judged under the id of its unit.
        var asked = ids.Concat(subjects.OfType<HomeRun>().Select(r => r.Unit.Id)).ToHashSet();
        foreach (var check in AllChecks.All)
        {
            var view = new House(house.State);
            var results = ReadRecorder.Record(() => Worked(check, house, view, asked), out var reads);
            foreach (var (info, _, outcome) in results.Where(r => ids.Contains(r.Subject.Id)))
            {
                if (outcome is Outcome.Fine { Working: { } fine })
                    yield return Made(house, info, null, fine, reads);
                else if (outcome is Outcome.Found { Working: { } broken } found)
                    yield return Made(house, info, found.Message.In(house), broken, reads);
            }
        }
    }

    private static List<CheckResult> Worked(ICheck check, House house, House view, HashSet<string> asked)
    {
        var results = check is SubjectCheck by
            ? by.SubjectIds(house).Where(asked.Contains).SelectMany(id => by.RunOn(by.Find(view, id))).ToList()
            : [.. check.Run(view)];
        // A working is printed for whoever asks; what it prints is among what was read.
        foreach (var working in results.Select(r => (r.Outcome as Outcome.Fine)?.Working ?? (r.Outcome as Outcome.Found)?.Working))
            _ = working?.Inputs;
        return results;
    }

    /// <param name="house">The house.</param>
    /// <param name="info">The check.</param>
    /// <param name="broken">What is wrong; null where the rule holds.</param>
    /// <param name="working">How it was worked out.</param>
    /// <param name="reads">What was read for it.</param>
    private static Figure Made(House house, CheckInfo info, string? broken, Working working, HashSet<long> reads)
    {
        var figure = new Figure(info.Id, broken ?? "the rule holds", working, info.Source,
            [.. FactsRead.Of(house, reads).Where(f => !FactTable.IsKit(f.Subject))]) { Unchecked = [.. UncheckedValues.In(house, reads)] };
        return figure.ByUnchecked is not { } by ? figure
            : figure with { Value = broken is null ? $"{figure.Value}, {by}" : UncheckedValues.Marked(broken, true) };
    }
}

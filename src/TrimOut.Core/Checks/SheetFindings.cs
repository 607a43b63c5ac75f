using System.Collections.Immutable;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>The findings of one sheet, dealt out by severity and phase, so that an edit leaves all others as they lie.</summary>
internal sealed class SheetFindings
{
    private readonly CheckSheet _sheet;
    private readonly Finding[] _findings;
    private readonly int[] _subjects;
    private readonly (int Place, Finding[] Findings)[] _dealt;
    private readonly bool _waived;

    private SheetFindings(CheckSheet sheet, Finding[] findings, int[] subjects, (int Place, Finding[] Findings)[] dealt, bool waived) =>
        (_sheet, _findings, _subjects, _dealt, _waived) = (sheet, findings, subjects, dealt, waived);

    /// <summary>What a sheet found in a house.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="house">The house.</param>
    /// <param name="waivers">The waivers of the house, by what they are about and their check.</param>
    /// <param name="waived">Which waivers hold.</param>
    /// <param name="before">What the check had found in another state of the house; null where it was not asked.</param>
    /// <param name="others">The items that are others since, by their places.</param>
    public static SheetFindings Of(
        CheckSheet sheet, House house, ILookup<(string, string?), Waiver> waivers, WaiverMemory waived, SheetFindings? before, ReadOnlySpan<int> others)
    {
        var results = sheet.Sum.Findings;
        var kept = before is { _waived: false } && !HasWaivers(house, sheet) ? before : null;
        var (findings, subjects) = (new Finding[results.Length], new int[results.Length]);
        var (first, last) = kept is null ? (0, 0) : Alike(kept._sheet.Sum.Findings, results);
        if (kept is not null)
        {
            Array.Copy(kept._findings, findings, first);
            Array.Copy(kept._subjects, subjects, first);
            Array.Copy(kept._findings, kept._findings.Length - last, findings, findings.Length - last, last);
            Array.Copy(kept._subjects, kept._subjects.Length - last, subjects, subjects.Length - last, last);
        }
        var again = new List<int>();
        for (var at = first; at < results.Length - last; at++)
            again.Add(at);
        if (kept is not null)
        {
            AddOf(others, subjects.AsSpan(0, first), 0, again);
            AddOf(others, subjects.AsSpan(results.Length - last), results.Length - last, again);
        }
        foreach (var at in again)
        {
            var (result, found) = (results[at], (Outcome.Found)results[at].Outcome);
            // The item as it is now: what was said of it may have been said of an earlier state, in something that it does not speak of.
            findings[at] = new Finding(result.Check, house.State.Items[result.Subject.Place], found, WaiverOf(result, found));
            subjects[at] = result.Subject.Place;
        }
        var isOneSort = kept is { _dealt.Length: 1 } && again.TrueForAll(at => PlaceOf(findings[at]) == kept._dealt[0].Place);
        return new(sheet, findings, subjects, isOneSort ? [(kept!._dealt[0].Place, findings)] : Dealt(findings),
            again.Exists(at => findings[at].Waiver is not null));

        Waiver? WaiverOf(CheckResult result, Outcome.Found found) => waivers.Count == 0 ? null
            : found.ToldOf.Prepend(new Outcome.Told(result.Subject.Id, found.Message))
                .Select(t => waivers[(t.Item, result.Check.Id)].LastOrDefault(w => waived.Holds(w, t.Message, house))).FirstOrDefault(w => w is not null);
    }

    /// <summary>Whether a sheet has these very findings in a house in which these items, by their places, are others.</summary>
    public bool AreStill(CheckSheet sheet, House house, ReadOnlySpan<int> others) => ReferenceEquals(sheet, _sheet) && !_waived
        && !_subjects.AsSpan().ContainsAny(others) && !HasWaivers(house, sheet);

    /// <summary>The findings of all sheets by severity, then by phase, then as the checks gave them.</summary>
    public static Finding[] InOrder(IReadOnlyCollection<SheetFindings> sheets)
    {
        var all = new Finding[sheets.Sum(s => s._findings.Length)];
        var at = 0;
        foreach (var (_, findings) in sheets.SelectMany(s => s._dealt).OrderBy(d => d.Place))
        {
            findings.CopyTo(all, at);
            at += findings.Length;
        }
        return all;
    }

    private static bool HasWaivers(House house, CheckSheet sheet) => house.Waivers.Any(w => w.Check == sheet.Check.Info.Id);

    private static int PlaceOf(Finding finding) => (int)finding.Check.Severity * PhaseNames.All.Count + (int)finding.Check.Phase;

    private static (int Place, Finding[] Findings)[] Dealt(Finding[] findings) => [.. findings.GroupBy(PlaceOf).Select(g => (g.Key, g.ToArray()))];

    /// <summary>How many results are the very same at the beginning and at the end.</summary>
    private static (int First, int Last) Alike(ImmutableArray<CheckResult> before, ImmutableArray<CheckResult> now)
    {
        var (first, last, most) = (0, 0, Math.Min(before.Length, now.Length));
        while (first < most && ReferenceEquals(before[first], now[first]))
            first++;
        while (last < most - first && ReferenceEquals(before[^(last + 1)], now[^(last + 1)]))
            last++;
        return (first, last);
    }

    private static void AddOf(ReadOnlySpan<int> others, ReadOnlySpan<int> subjects, int from, List<int> to)
    {
        for (var at = subjects.IndexOfAny(others); at >= 0;)
        {
            to.Add(from + at);
            var next = subjects[(at + 1)..].IndexOfAny(others);
            at = next < 0 ? -1 : at + 1 + next;
        }
    }
}

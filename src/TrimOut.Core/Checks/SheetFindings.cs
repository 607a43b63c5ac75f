using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>The findings of one sheet, dealt out by severity and phase, so that an edit leaves all others as they lie.</summary>
internal sealed class SheetFindings
{
    private readonly CheckSheet _sheet;
    private readonly (int Place, Finding[] Findings)[] _dealt;
    private readonly int[] _subjects;
    private readonly bool _waived;

    private SheetFindings(CheckSheet sheet, List<Finding> findings)
    {
        _sheet = sheet;
        _dealt = [.. findings.GroupBy(f => (int)f.Check.Severity * PhaseNames.All.Count + (int)f.Check.Phase).Select(g => (g.Key, g.ToArray()))];
        _subjects = [.. findings.Select(f => f.Subject.Place)];
        _waived = findings.Exists(f => f.Waiver is not null);
    }

    /// <summary>What a sheet found in a house.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="house">The house.</param>
    /// <param name="waivers">The waivers of the house, by what they are about and their check.</param>
    /// <param name="waived">Which waivers hold.</param>
    public static SheetFindings Of(CheckSheet sheet, House house, ILookup<(string, string?), Waiver> waivers, WaiverMemory waived)
    {
        return new(sheet, sheet.Sum.Findings.Select(r => (Result: r, Found: (Outcome.Found)r.Outcome))
            // The item as it is now: what was said of it may have been said of an earlier state, in something that it does not speak of.
            .Select(r => new Finding(r.Result.Check, house.State.Items[r.Result.Subject.Place], r.Found, WaiverOf(r.Result, r.Found))).ToList());

        Waiver? WaiverOf(CheckResult result, Outcome.Found found) => waivers.Count == 0 ? null
            : found.ToldOf.Prepend(new Outcome.Told(result.Subject.Id, found.Message))
                .Select(t => waivers[(t.Item, result.Check.Id)].LastOrDefault(w => waived.Holds(w, t.Message, house))).FirstOrDefault(w => w is not null);
    }

    /// <summary>Whether a sheet has these very findings in a house in which these items, by their places, are others.</summary>
    public bool AreStill(CheckSheet sheet, House house, ReadOnlySpan<int> others) => ReferenceEquals(sheet, _sheet) && !_waived
        && !_subjects.AsSpan().ContainsAny(others) && !house.Waivers.Any(w => w.Check == sheet.Check.Info.Id);

    /// <summary>The findings of all sheets by severity, then by phase, then as the checks gave them.</summary>
    public static Finding[] InOrder(IEnumerable<SheetFindings> sheets) =>
        [.. sheets.SelectMany(s => s._dealt).OrderBy(d => d.Place).SelectMany(d => d.Findings)];
}

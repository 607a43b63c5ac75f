using System.Collections.Immutable;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>The findings of one check in a house, with the items as they are in it.</summary>
internal sealed class SheetFindings
{
    private readonly CheckSheet _sheet;
    private readonly Finding[] _findings;
    private readonly int[] _subjects;
    private readonly bool _waived;

    /// <summary>What a sheet found in a house.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="house">The house.</param>
    /// <param name="waivers">The waivers of the house, by what they are about and their check.</param>
    /// <param name="waived">Which waivers hold.</param>
    public SheetFindings(CheckSheet sheet, House house, ILookup<(string, string?), Waiver> waivers, WaiverMemory waived)
    {
        _sheet = sheet;
        _findings = [.. sheet.Found.Select(FindingOf)];
        _subjects = [.. _findings.Select(f => f.Subject.Place)];
        _waived = _findings.Any(f => f.Waiver is not null);

        Finding FindingOf(CheckResult result)
        {
            var found = (Outcome.Found)result.Outcome;
            // The item as it is now: what was said of it may have been said of an earlier state, in something that it does not speak of.
            return new(result.Check, house.State.Items[result.Subject.Place], found, waivers.Count == 0 ? null
                : found.ToldOf.Prepend(new Outcome.Told(result.Subject.Id, found.Message))
                    .Select(t => waivers[(t.Item, result.Check.Id)].LastOrDefault(w => waived.Holds(w, t.Message, house))).FirstOrDefault(w => w is not null));
        }
    }

    /// <summary>Whether a sheet has these very findings in a house in which these items, by their places, are others.</summary>
    public bool AreStill(CheckSheet sheet, House house, HashSet<int> others) => ReferenceEquals(sheet, _sheet) && !HasWaivers(house)
        && !_waived && !_subjects.Any(others.Contains);

    private bool HasWaivers(House house) => house.Waivers.Any(w => w.Check == _sheet.Check.Info.Id);

    /// <summary>The findings of all sheets by severity, then by phase, then as the checks gave them.</summary>
    public static ImmutableArray<Finding> InOrder(IEnumerable<SheetFindings> sheets)
    {
        var dealt = new SortedList<(Severity, Phase), List<Finding>>();
        var (info, pile) = ((CheckInfo?)null, new List<Finding>());
        foreach (var finding in sheets.SelectMany(s => s._findings))
        {
            if (!ReferenceEquals(finding.Check, info))
            {
                info = finding.Check;
                if (!dealt.TryGetValue((info.Severity, info.Phase), out pile!))
                    dealt.Add((info.Severity, info.Phase), pile = []);
            }
            pile.Add(finding);
        }
        return [.. dealt.Values.SelectMany(f => f)];
    }
}

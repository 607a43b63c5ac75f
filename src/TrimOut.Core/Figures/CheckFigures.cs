using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Figures;

/// <summary>What the checks worked out, whether the rule holds or not: the same working that a finding shows.</summary>
internal static class CheckFigures
{
    /// <summary>Of a unit, its window and its home run.</summary>
    public static IEnumerable<Figure> Of(Unit unit) => Of(unit.House, unit, unit.Window, unit.Run);

    /// <summary>Of these subjects.</summary>
    public static IEnumerable<Figure> Of(House house, params Subject?[] subjects)
    {
        var ids = subjects.OfType<Subject>().Select(s => s.Id).ToHashSet();
        foreach (var check in AllChecks.All)
        {
            var outcomes = check switch
            {
                UnitCheck of => subjects.OfType<Unit>().Select(of.Judge),
                RunCheck of => subjects.OfType<HomeRun>().Select(of.Judge),
                WindowCheck of => subjects.OfType<Window>().Where(w => !w.LeftOut).Select(of.Judge),
                Check<Panel> of => subjects.OfType<Panel>().Select(of.Judge),
                WideCheck of => of.Run(house).Where(r => ids.Contains(r.Subject.Id)).Select(r => r.Outcome),
                _ => [],
            };
            foreach (var outcome in outcomes)
            {
                if (outcome is Outcome.Fine { Working: { } held })
                    yield return Made(check.Info, "the rule holds", held);
                else if (outcome is Outcome.Found { Working: { } broken } found)
                    yield return Made(check.Info, found.Message.In(house), broken);
            }
        }
    }

    private static Figure Made(CheckInfo info, string value, Working working) =>
        new(info.Id, value, working, info.Source, [.. FactTable.All.Where(f => !FactTable.IsKit(f.Subject) && Names(info.Needs, f.Label))]);

    /// <summary>Whether a list of facts names this one, as a word of its own.</summary>
    private static bool Names(string needs, string label)
    {
        for (var at = needs.IndexOf(label, StringComparison.OrdinalIgnoreCase); at >= 0; at = needs.IndexOf(label, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if ((at == 0 || !char.IsLetter(needs[at - 1])) && (at + label.Length == needs.Length || !char.IsLetter(needs[at + label.Length])))
                return true;
        }
        return false;
    }
}

using TrimOut.Core.Checks;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>The signs beside what a check says something about.</summary>
internal static class FindingSigns
{
    public static readonly Sign Stop = new(g => g.Stop, "an open stop: it will not work or is not safe");
    public static readonly Sign Care = new(_ => "*", "an open caution or note, no stop");

    public static readonly IReadOnlyList<Sign> All = [Stop, Care];

    /// <summary>The sign for the worst of some findings that are open; null when none is.</summary>
    public static (Sign Sign, Severity Worst)? Of(IEnumerable<Finding> findings) =>
        findings.Where(f => f.Open).Select(f => (Severity?)f.Check.Severity).Min() is { } worst ? (worst == Severity.Stop ? Stop : Care, worst) : null;

    /// <summary>Puts the sign for the worst of some findings; nothing when none is open.</summary>
    public static void Put(Area area, int x, int y, IEnumerable<Finding> findings, Glyphs glyphs, Tone? selected = null)
    {
        if (Of(findings) is { } found)
            area.Put(x, y, found.Sign.Drawn(glyphs), selected ?? UnitCard.ToneOf(found.Worst));
    }
}

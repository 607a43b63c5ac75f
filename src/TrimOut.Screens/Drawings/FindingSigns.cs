using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Drawings;

/// <summary>How what a check says looks beside what it says it about: a stop has its sign and its own ground on every screen, under the cursor too.</summary>
internal static class FindingSigns
{
    public static readonly Sign Stop = new(g => g.Stop, "an open stop: it will not work or is not safe");
    public static readonly Sign Care = new(_ => "*", "an open caution or note, no stop");

    public static readonly IReadOnlyList<Sign> All = [Stop, Care];

    /// <summary>The same in rows that count: of what stands there and of the parts that it is made of, is fed by or is moved by.</summary>
    public static readonly IReadOnlyList<Sign> Counting =
    [
        new(g => Counted(g.Stop, 2), "two open stops, of what stands there or of the parts and units that belong to it"),
        new(_ => Counted("*", 1), "one open caution, and no stop"),
    ];

    /// <summary>Cells that a count takes at the most before what stands in its row.</summary>
    public const int CountCells = 3;

    /// <summary>Whether a stop is open among some findings.</summary>
    public static bool AnyStop(IEnumerable<Finding> findings) => findings.Any(IsStop);

    /// <summary>Whether a finding is an open stop.</summary>
    public static bool IsStop(Finding finding) => finding is { Open: true, Check.Severity: Severity.Stop };

    /// <summary>The sign for the worst of some findings that are open; null when none is.</summary>
    public static (Sign Sign, Severity Worst)? Of(IEnumerable<Finding> findings) =>
        findings.Where(f => f.Open).Select(f => (Severity?)f.Check.Severity).Min() is { } worst ? (worst == Severity.Stop ? Stop : Care, worst) : null;

    /// <summary>Puts the sign for the worst of some findings; nothing when none is open.</summary>
    public static void Put(Area area, int x, int y, IEnumerable<Finding> findings, Glyphs glyphs, Tone? selected = null)
    {
        if (Of(findings) is { } found)
            area.Put(x, y, found.Sign.Drawn(glyphs), found.Worst == Severity.Stop ? Tone.Stop : selected ?? UnitCard.ToneOf(found.Worst));
    }

    /// <summary>How many stops are open; where there is none how many cautions, or the sign of a note; nothing where nothing is open.</summary>
    public static void PutCount(Area area, int x, int y, IEnumerable<Finding> findings, Glyphs glyphs, Tone? selected = null)
    {
        var open = findings.Where(f => f.Open).Distinct().ToList();
        var (stops, cautions) = (open.Count(IsStop), open.Count(f => f.Check.Severity == Severity.Caution));
        if (stops > 0)
            area.Put(x, y, Short(glyphs.Stop, stops), Tone.Stop);
        else if (cautions > 0)
            area.Put(x, y, Short("*", cautions), selected ?? Tone.Caution);
        else
            Put(area, x, y, open, glyphs, selected);
    }

    /// <summary>A sign with how often, in the cells that rows have for it: more than they can tell is told as more.</summary>
    private static string Short(string sign, int count) => Counted(sign, count) is { Length: <= CountCells } whole ? whole : sign + ">9";

    /// <summary>How many stops and cautions are open; returns the column after it.</summary>
    public static int PutCounts(Area area, int x, int y, IReadOnlyList<Finding> findings, Glyphs glyphs, Tone? selected = null)
    {
        if (findings.Count(IsStop) is > 0 and var stops)
            x = area.Put(x, y, Counted(glyphs.Stop, stops), Tone.Stop) + 1;
        return findings.Count(f => f is { Open: true, Check.Severity: Severity.Caution }) is > 0 and var cautions
            ? area.Put(x, y, Counted("*", cautions), selected ?? Tone.Caution)
            : x;
    }

    /// <summary>A sign with how often.</summary>
    public static string Counted(string sign, int count) => string.Create(CultureInfo.InvariantCulture, $"{sign}{count}");
}

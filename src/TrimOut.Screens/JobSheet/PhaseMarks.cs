using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.JobSheet;

/// <summary>How far a unit, or the whole house, is in a phase: as signs and figures.</summary>
internal static class PhaseMarks
{
    public static readonly Sign Stop = new(g => g.Stop, "in a unit's row: an open stop in the phase above it");
    public static readonly Sign Done = new(g => g.Done, "in a unit's row: every step of the phase is done");
    public static readonly Sign Begun = new(g => g.Begun, "in a unit's row: the phase is begun");
    public static readonly Sign Nothing = new(g => g.Nothing, "in a unit's row: nothing of the phase is done yet");
    public static readonly Sign NotAsked = new(_ => " ", "(a blank) in a unit's row: the phase asks nothing of this unit");

    /// <summary>The signs of the sheet, the figures among them made as the sheet makes them.</summary>
    public static IReadOnlyList<Sign> All { get; } =
    [
        .. PhaseNames.All.Select(p => Sign.Words(Ribbon.Number(p), $"above the name of a phase, and heads its column of the sheet: {p.Full()}")),
        Stop, Done, Begun, Nothing, NotAsked,
        new(g => FindingSigns.Counted(g.Stop, 2), "in the top line, above a phase, or at the end of a unit's row: two open stops"),
        new(g => FindingSigns.Counted("*", 1), "at the end of a unit's row: one open caution"),
        new(g => Sum(new Progress(72, 72), 8, g), "under a phase: all its steps are done"),
        new(g => Sum(new Progress(36, 72), 8, g), "under a phase: steps done, of all its steps"),
        new(g => Sum(new Progress(107, 126), 5, g), "under a phase: the same in per cent, where the figures do not fit"),
        new(g => g.Arrow, "before a unit's tag: picked, to be marked together with others"),
    ];

    /// <summary>One sign for a unit in a phase.</summary>
    public static Sign Of(Unit unit, Phase phase, IReadOnlyList<Finding> open, StepList steps)
    {
        if (open.Any(f => f.Check.Severity == Severity.Stop && f.Check.Phase == phase))
            return Stop;
        return Of(Progress.Of(unit, phase, steps));
    }

    /// <summary>One sign for how far something is.</summary>
    public static Sign Of(Progress progress) =>
        progress.Total == 0 ? NotAsked : progress.Complete ? Done : progress.Done > 0 ? Begun : Nothing;

    /// <summary>The marks in a line, each with its word.</summary>
    public static string Legend(Glyphs glyphs) => $"{glyphs.Done} done  {glyphs.Begun} begun  {glyphs.Nothing} not yet  {glyphs.Stop} stop";

    /// <summary>Done and in all, or where that does not fit, in per cent: never a figure cut in half.</summary>
    public static string Sum(Progress sum, int cells, Glyphs glyphs)
    {
        if (sum.Total == 0)
            return "-";
        if (sum.Complete)
            return $"{glyphs.Done} all";
        var both = string.Create(CultureInfo.InvariantCulture, $"{sum.Done}/{sum.Total}");
        return both.Length <= cells ? both : string.Create(CultureInfo.InvariantCulture, $"{100 * sum.Done / sum.Total} %");
    }
}

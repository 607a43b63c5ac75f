using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>What becomes of a window that a revised schedule no longer has.</summary>
public enum GoneAs
{
    /// <summary>Nothing: it stays as it is.</summary>
    Left,

    /// <summary>Its note says from the schedule of which day on it is gone.</summary>
    Noted,

    /// <summary>It is left out, with that as the reason; all that it had stays in the history.</summary>
    LeftOut,
}

/// <summary>Takes of a schedule what somebody chose, row by row.</summary>
public static class TakeRows
{
    private const string Counts = ": ";
    private const string GoneFrom = "gone from the schedule of ";

    /// <summary>The change of a schedule, without the rows that are left and with what becomes of windows that are gone.</summary>
    /// <param name="draft">The whole change; what it is called ends with the counts of <see cref="Counted"/>.</param>
    /// <param name="left">The edits of rows that are left. A room that only they would be in does not come either.</param>
    /// <param name="windows">How many new windows come in.</param>
    /// <param name="values">How many values of other windows come in.</param>
    /// <param name="gone">
    /// Windows that the schedule no longer has, with what becomes of each; one whose note says it already stays as it is, and is not counted.
    /// </param>
    /// <param name="on">The day of the schedule.</param>
    /// <returns>The change, without edits where nothing is to be changed; or why a note can't be written.</returns>
    public static Result<Draft> Of(
        Draft draft, IEnumerable<Edit> left, int windows, int values, IEnumerable<(Window Window, GoneAs As)> gone, DateOnly on)
    {
        var without = left.ToHashSet<Edit>(ReferenceEqualityComparer.Instance);
        ImmutableArray<Edit> edits = [.. draft.Edits.Where(e => !without.Contains(e))];
        var needed = edits.OfType<Edit.Put>().Select(p => p.Value).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var unused = edits.OfType<Edit.Add>().Where(a => a.Kind == ItemKind.Room && !needed.Contains(a.Item)).Select(a => a.Item)
            .ToHashSet(StringComparer.Ordinal);
        edits = [.. edits.Where(e => !unused.Contains(e is Edit.Add add ? add.Item : e is Edit.Put put ? put.Item : ""))];
        var (chosen, count) = (new Draft("", edits), 0);
        foreach (var (window, how) in gone.Where(g => g.As != GoneAs.Left && !(g.As == GoneAs.Noted && IsNoted(g.Window))))
        {
            var with = Gone(window, how, on);
            if (!with.Ok)
                return with;
            (chosen, count) = (chosen.And(with.Value), count + 1);
        }
        var name = draft.What.LastIndexOf(Counts, StringComparison.Ordinal) is > 0 and var at ? draft.What[..at] : draft.What;
        return chosen with { What = $"{name}{Counts}{Counted(windows, values, count)}" };
    }

    /// <summary>
    /// Whether a window says already that it is gone, in its note or as the reason why it is left out: then it says so once, with the day of the first schedule
    /// without it.
    /// </summary>
    /// <param name="window">The window.</param>
    public static bool IsNoted(Window window) => window.Item.Get(WindowFacts.Note)?.Contains(GoneFrom, StringComparison.OrdinalIgnoreCase) == true
        || (window.LeftOut && window.Item.Get(WindowFacts.NotCoveredBecause)?.Contains(GoneFrom, StringComparison.OrdinalIgnoreCase) == true);

    /// <summary>How many windows, values and windows that are gone a schedule brings, as the history says it.</summary>
    public static string Counted(int windows, int values, int gone = 0) => string.Create(CultureInfo.InvariantCulture,
        $"{windows} window{(windows == 1 ? "" : "s")}{(values == 0 ? "" : $", {values} value{(values == 1 ? "" : "s")} of others")}"
            + $"{(gone == 0 ? "" : $", {gone} gone")}");

    private static Result<Draft> Gone(Window window, GoneAs how, DateOnly on)
    {
        var said = $"{GoneFrom}{on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}";
        if (how == GoneAs.LeftOut)
            return LeaveOut.Window(window, said);
        var sentence = $"{char.ToUpperInvariant(said[0])}{said[1..]}";
        var noted = window.Item.Get(WindowFacts.Note) is { } before ? $"{before.TrimEnd(' ', '.')}. {sentence}" : sentence;
        return WindowFacts.Note.ReadTyped(noted, window.House).Then<Draft>(stored => new Draft(said).PutStored(window.Id, WindowFacts.Note.Name, stored));
    }
}

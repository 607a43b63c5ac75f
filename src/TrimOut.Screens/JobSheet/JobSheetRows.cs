using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>A row of the sheet: a room, a unit, or a window left out on purpose.</summary>
internal sealed record JobSheetRow(string Text, Unit? Unit, bool IsRoom);

/// <summary>The order of the sheet.</summary>
internal enum JobSheetOrder
{
    /// <summary>By room, as one walks.</summary>
    Walk,

    /// <summary>Most open stops first.</summary>
    StopsFirst,

    /// <summary>What is least far first.</summary>
    LeastDone,

    /// <summary>By tag.</summary>
    Tag,
}

/// <summary>Which rows the sheet has under its filter.</summary>
internal static class JobSheetRows
{
    public static IReadOnlyList<Unit> Units(JobSheetScreen screen, ScreenContext context) =>
        [.. Sorted(screen, context, context.House.Units.Where(u => Fits(screen, u, context)))];

    public static IReadOnlyList<JobSheetRow> Of(JobSheetScreen screen, ScreenContext context)
    {
        if (screen.Order != JobSheetOrder.Walk)
            return [.. Units(screen, context).Select(u => new JobSheetRow("", u, false))];
        var rows = new List<JobSheetRow>();
        var all = !screen.OnlyStops && !screen.OnlyOpen && screen.Search.Length == 0;
        string? room = null;
        foreach (var window in context.House.Windows)
        {
            var units = window.LeftOut ? [] : window.Units.Where(u => Fits(screen, u, context)).ToList();
            if (units.Count == 0 && !(all && window.LeftOut))
                continue;
            var name = window.Room is { } r ? $"{r.Name}{(r.Floor is { } floor ? $" ({floor})" : "")}" : "(no room yet)";
            if (name != room)
                rows.Add(new JobSheetRow(room = name, null, true));
            if (window.LeftOut)
                rows.Add(new JobSheetRow($" {window.Tag}  left out: {window.Item.Get(WindowFacts.NotCoveredBecause) ?? "no reason given"}", null, false));
            rows.AddRange(units.Select(u => new JobSheetRow("", u, false)));
        }
        return rows;
    }

    public static string FilterText(JobSheetScreen screen)
    {
        string?[] parts =
        [
            screen.OnlyStops ? "stops" : null,
            screen.OnlyOpen ? (screen.PhaseShown is { } p ? $"{p.Full()} not done" : "not done") : null,
            screen.Order switch
                { JobSheetOrder.StopsFirst => "stops first", JobSheetOrder.LeastDone => "least done first", JobSheetOrder.Tag => "by tag", _ => null },
            screen.Search.Length > 0 ? $"\"{screen.Search}\"" : null,
        ];
        return string.Join(", ", parts.OfType<string>());
    }

    private static IEnumerable<Unit> Sorted(JobSheetScreen screen, ScreenContext context, IEnumerable<Unit> units) => screen.Order switch
    {
        JobSheetOrder.StopsFirst => units.OrderByDescending(u => context.Report.About(u).Count(f => f is { Open: true, Check.Severity: Severity.Stop })),
        JobSheetOrder.LeastDone => units.OrderBy(u => PhaseNames.All.Sum(p => Progress.Of(u, p, context.Steps).Done)),
        JobSheetOrder.Tag => units.OrderBy(u => u.Tag, StringComparer.OrdinalIgnoreCase),
        _ => units,
    };

    private static bool Fits(JobSheetScreen screen, Unit unit, ScreenContext context) =>
        (!screen.OnlyStops || context.Report.About(unit).Any(f => f is { Open: true, Check.Severity: Severity.Stop }))
        && (!screen.OnlyOpen
            || (screen.PhaseShown is { } phase ? !Progress.Of(unit, phase, context.Steps).Complete : Progress.Next(unit, context.Steps) is not null))
        && (screen.Search.Length == 0 || Text(unit).Contains(screen.Search, StringComparison.OrdinalIgnoreCase));

    private static string Text(Unit unit) => $"{unit.Tag} {unit.Kind?.Name} {unit.Window.Room?.Name} {unit.Window.Room?.Floor}";
}

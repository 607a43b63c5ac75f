using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>A row of the sheet: a room, a unit, or a window left out on purpose.</summary>
internal sealed record JobSheetRow(string Text, Unit? Unit, bool IsRoom, Window? LeftOut = null)
{
    /// <summary>What the cursor can stand on; null for a room.</summary>
    public string? Id => Unit?.Id ?? LeftOut?.Id;
}

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

    /// <summary>What the cursor can stand on, in the order of the rows.</summary>
    public static IReadOnlyList<string> Ids(JobSheetScreen screen, ScreenContext context) => [.. Of(screen, context).Select(r => r.Id).OfType<string>()];

    public static string LeftOutText(Window window) => $"left out: {window.Item.Get(WindowFacts.NotCoveredBecause) ?? "no reason given"}";

    public static IReadOnlyList<JobSheetRow> Of(JobSheetScreen screen, ScreenContext context)
    {
        if (screen.Order != JobSheetOrder.Walk)
        {
            return [.. Units(screen, context).Select(u => new JobSheetRow("", u, false)),
                .. context.House.Windows.Where(w => w.LeftOut && Fits(screen, w)).Select(LeftOut)];
        }
        var rows = new List<JobSheetRow>();
        string? room = null;
        foreach (var window in context.House.Windows)
        {
            var units = window.LeftOut ? [] : window.Units.Where(u => Fits(screen, u, context)).ToList();
            var leftOut = window.LeftOut && Fits(screen, window);
            if (units.Count == 0 && !leftOut)
                continue;
            var name = window.Room is { } r ? $"{r.Name}{(r.Floor is { } floor ? $" ({floor})" : "")}" : "(no room yet)";
            if (name != room)
                rows.Add(new JobSheetRow(room = name, null, true));
            if (leftOut)
                rows.Add(LeftOut(window));
            rows.AddRange(units.Select(u => new JobSheetRow("", u, false)));
        }
        return rows;
    }

    /// <summary>How many windows a filter hides, and the one that is looked for when it is among them; empty where it hides none.</summary>
    public static string HiddenText(JobSheetScreen screen, ScreenContext context)
    {
        if (!screen.Filters)
            return "";
        var all = context.House.Units.Length + context.House.Windows.Count(w => w.LeftOut);
        var shown = Ids(screen, context);
        var sought = screen.Search.Length > 0 ? context.House.FindTag(screen.Search) : null;
        return sought is not null && !shown.Any(id => id == sought.Id || sought.Units.Any(u => u.Id == id)) ? $"; {sought.Tag} is hidden"
            : string.Create(CultureInfo.InvariantCulture, $": {shown.Count} of {all}");
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

    private static JobSheetRow LeftOut(Window window) => new($" {window.Tag}  {LeftOutText(window)}", null, false, window);

    private static bool Fits(JobSheetScreen screen, Window leftOut) => !screen.OnlyStops && !screen.OnlyOpen
        && (screen.Search.Length == 0 || Filtering.Fits(
            $"{leftOut.Tag} {leftOut.Room?.Name} {leftOut.Room?.Floor} {LeftOutText(leftOut)}", screen.Search));

    private static bool Fits(JobSheetScreen screen, Unit unit, ScreenContext context) =>
        (!screen.OnlyStops || context.Report.About(unit).Any(f => f is { Open: true, Check.Severity: Severity.Stop }))
        && (!screen.OnlyOpen
            || (screen.PhaseShown is { } phase ? !Progress.Of(unit, phase, context.Steps).Complete : Progress.Next(unit, context.Steps) is not null))
        && (screen.Search.Length == 0 || Filtering.Fits(Text(unit), screen.Search));

    private static string Text(Unit unit) => $"{unit.Tag} {unit.Kind?.Name} {unit.Window.Room?.Name} {unit.Window.Room?.Floor}";
}

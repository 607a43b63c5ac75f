using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.HouseFile.Schedules;
using TrimOut.Screens.Schedules;

namespace TrimOut.Desks;

/// <summary>Window schedules for the screens.</summary>
internal static class ScheduleDesk
{
    private const int Most = 200;
    private static readonly string[] Patterns = ["*.csv", "*.xlsx", "*.xls", "*.ifc"];

    /// <summary>What was found, the latest first.</summary>
    public static IReadOnlyList<ScheduleChoice> Find(string house, IEnumerable<string> folders) =>
    [
        .. folders.Prepend(Path.GetDirectoryName(house) ?? "").Where(f => f.Length > 0).Distinct(StringComparer.Ordinal)
            .SelectMany(f => Patterns.SelectMany(p => FoundFiles.In(f, p))).Distinct(StringComparer.Ordinal).Take(Most)
            .Select(f => new ScheduleChoice(f, FoundFiles.Changed(f))).OrderByDescending(f => f.Changed),
    ];

    /// <summary>What a schedule would bring, and the headers that it has, in one word.</summary>
    public static Result<(ScheduleRead Read, string Headers)> Read(HouseLog log, string path, IReadOnlyDictionary<string, string> columns)
    {
        var named = columns.Select(c => (Field: ScheduleField.Find(c.Key), c.Value)).Where(c => c.Field is not null)
            .ToImmutableDictionary(c => c.Field!, c => c.Value);
        return ScheduleFile.Read(path)
            .Then(file => ScheduleImport.Plan(log, file, Path.GetFileName(path),
                ScheduleOptions.ByHeaders with { Columns = named, Revised = true, Unmapped = true }))
            .Then<(ScheduleRead, string)>(plan =>
                (Told(plan), string.Join('\n', plan.Columns.Select(c => c.Header).Concat(plan.Unused).Order(StringComparer.Ordinal))));
    }

    private static ScheduleRead Told(SchedulePlan plan) => new(plan.Sheet, plan.Changes ? plan.Draft : null,
        [.. plan.Windows.Select(w => new ScheduleLine(w.Tag, string.Join(", ", new[] { w.Room ?? "no room", Size(w), w.Unit }.Where(t => t.Length > 0)))
            { Edits = w.Edits })],
        [.. plan.Revised.Select(r => new ScheduleLine(r.Tag, $"{r.Label}: {(r.Here.Length > 0 ? r.Here : "nothing")} here, {r.There} there. "
            + (r.KeptBecause is { } why ? $"Kept: {why}" : "Taken")) { Edits = r.Edits })],
        plan.Revised.Count(r => r.KeptBecause is null),
        plan.Missing,
        [
            .. plan.Problems.Select(p =>
                new ScheduleLine(string.Create(CultureInfo.InvariantCulture, $"line {p.Line}"), $"{p.Column}: {p.Reason} {p.Outcome}")),
            .. plan.Understood.Select(u => new ScheduleLine("understood", u)),
        ],
        [.. ScheduleField.All.Select(f => new ScheduleColumn(f.Name, f.Help, plan.Columns.Where(c => c.Field == f).Select(c => c.Header).FirstOrDefault()))],
        plan.Unused);

    private static string Size(PlannedWindow window) => (window.Width, window.Height) switch
    {
        ({ Length: > 0 } width, { Length: > 0 } height) => $"{width} x {height}",
        ({ Length: > 0 } width, _) => $"{width} wide, no height",
        (_, { Length: > 0 } height) => $"{height} high, no width",
        _ => "no size",
    };
}

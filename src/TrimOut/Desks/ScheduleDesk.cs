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

    /// <summary>What a schedule would bring.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="path">The file.</param>
    /// <param name="columns">Columns that were chosen for this file, field to header: one that it has not is refused.</param>
    /// <param name="kept">Columns that were chosen before, by the headers of those schedules; taken where none are chosen.</param>
    /// <returns>That, with the headers of the file in one word.</returns>
    public static Result<(ScheduleRead Read, string Headers)> Read(HouseLog log, string path, IReadOnlyDictionary<string, string> columns,
        IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> kept) => ScheduleFile.Read(path).Then(file =>
        {
            Result<SchedulePlan> Plan(IReadOnlyDictionary<string, string> named, bool asBefore) => ScheduleImport.Plan(log, file, Path.GetFileName(path),
                ScheduleOptions.ByHeaders with
                {
                    Columns = named.Select(c => (Field: ScheduleField.Find(c.Key), c.Value)).Where(c => c.Field is not null)
                        .ToImmutableDictionary(c => c.Field!, c => c.Value),
                    Revised = true,
                    Unmapped = true,
                    AsBefore = asBefore,
                });
            return Plan(columns, asBefore: false).Then<(ScheduleRead, string)>(plan =>
            {
                var headers = KeptColumns.Key(plan.Columns.Select(c => c.Header).OfType<string>().Concat(plan.Unused));
                if (columns.Count > 0 || KeptColumns.For(kept, headers) is not { } before)
                    return (Told(plan), headers);
                return Plan(before.Columns, asBefore: true).Then<(ScheduleRead, string)>(again => (Told(again) with
                {
                    Remarks = before.Same ? Told(again).Remarks : [KeptColumns.Nearly, .. Told(again).Remarks],
                }, headers));
            });
        });

    private static ScheduleRead Told(SchedulePlan plan) => new(plan.Sheet, plan.Changes ? plan.Draft : null,
        [.. plan.Windows.Select(w => new ScheduleLine(w.Tag, string.Join(", ", new[] { w.Room ?? "no room", Size(w), w.Unit }.Where(t => t.Length > 0)))
            { Edits = w.Edits })],
        [.. plan.Revised.Select(r => new ScheduleLine(r.Tag, $"{r.Label}: {(r.Here.Length > 0 ? r.Here : "nothing")} here, {r.There} there. "
            + (r.KeptBecause is { } why ? $"Kept: {why}" : "Taken")) { Edits = r.Edits, Kept = r.KeptBecause is not null })],
        plan.Revised.Count(r => r.KeptBecause is null),
        plan.Missing,
        [
            .. plan.Problems.Select(p =>
                new ScheduleLine(string.Create(CultureInfo.InvariantCulture, $"line {p.Line}"), $"{p.Column}: {p.Reason} {p.Outcome}")),
            .. plan.Understood.Select(u => new ScheduleLine("understood", u)),
        ],
        [.. ScheduleField.All.Select(f => (Field: f, Taken: plan.Columns.FirstOrDefault(c => c.Field == f)))
            .Select(c => new ScheduleColumn(c.Field.Name, c.Field.Help, c.Taken?.Header)
            {
                Name = c.Taken?.Name ?? "",
                Said = c.Taken?.Said ?? "",
                From = c.Taken?.From ?? "from no column",
            })],
        plan.Unused)
    {
        Standing = plan.Standing,
    };

    private static string Size(PlannedWindow window) => (window.Width, window.Height) switch
    {
        ({ Length: > 0 } width, { Length: > 0 } height) => $"{width} x {height}",
        ({ Length: > 0 } width, _) => $"{width} wide, no height",
        (_, { Length: > 0 } height) => $"{height} high, no width",
        _ => "no size",
    };
}

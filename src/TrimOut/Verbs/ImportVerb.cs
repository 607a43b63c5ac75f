using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Schedules;

namespace TrimOut.Verbs;

/// <summary><c>trimout import</c>: windows from a schedule.</summary>
internal static class ImportVerb
{
    public static Command Build()
    {
        var path = Common.House();
        var schedule = new Argument<string>("SCHEDULE")
        {
            Description = "The window schedule: CSV, a spreadsheet (.xlsx, .xls) or a building model (IFC as STEP text).",
        };
        var room = new Option<string?>("--room") { Description = "The room of windows that have none.", HelpName = "name" };
        var units = new Option<string?>("--units") { Description = "The unit of bare numbers where a header names none; the house's own when left out." };
        units.AcceptOnlyFromAmong("in", "ft", "mm", "cm");
        var column = new Option<string[]>("--column")
        {
            Description = "Which column holds what, such as tag=Mark: its header, a part of it that no other one has, or its place such as #3. A unit behind "
                + "it (width=Frame W=mm) is that of its bare numbers; with nothing behind the first = it is taken from no column. "
                + string.Join("; ", ScheduleField.All.Select(f => $"{f.Name}: {f.Help}")) + ".",
            HelpName = "field=Header",
        };
        var columnsFrom = new Option<string?>("--columns") { Description = "A text file with such lines, as --keep-columns writes it.", HelpName = "file" };
        var keep = new Option<string?>("--keep-columns")
        {
            Description = "Also write which column was taken for what to a file, for the next schedule of the same office.",
            HelpName = "file",
        };
        var sheet = new Option<string?>("--sheet")
        {
            Description = "The sheet of a spreadsheet; left out, the one whose header names the most.",
            HelpName = "name",
        };
        var encoding = new Option<string?>("--encoding")
        {
            Description = "The encoding of a CSV file, such as 850, 1250 or macintosh, where it is neither Unicode nor Western European (1252).",
            HelpName = "name",
        };
        var revised = new Option<bool>("--revised")
        {
            Description = "The schedule is a revised one: windows that the house has are compared. What an import brought is renewed, what somebody typed or "
                + "measured here stays, and both are listed, with the windows that the schedule no longer has.",
        };
        var leave = new Option<string[]>("--leave")
        {
            Description = "A window of which nothing is taken: its row neither adds nor renews it. As often as needed.",
            HelpName = "tag",
        };
        var gone = new Option<string?>("--gone")
        {
            Description = "What becomes of windows that a revised schedule no longer has: note writes into their notes from which day on they are gone, "
                + "leave-out leaves them out with that reason, but for those on order, here or with a cable in the wall, which are noted. Without it they "
                + "stay as they are.",
        };
        gone.AcceptOnlyFromAmong("note", "leave-out");
        var dry = new Option<bool>("--try") { Description = "Only show what would be imported." };
        var by = Common.By();
        var verb = new Command("import", "Add the windows of a schedule to a house. Ends with 2 when something in it could not be read.") { path, schedule,
            room, units, column, columnsFrom, keep, sheet, encoding, revised, leave, gone, dry, by };
        verb.SetAction(parsed =>
        {
            var columns = Named(ColumnsIn(parsed.GetValue(columnsFrom)), parsed.GetValue(columnsFrom) ?? "")
                .SetItems(Named(parsed.GetValue(column) ?? [], "--column"));
            var csv = parsed.GetRequiredValue(schedule);
            if (PlainFile.NameOf(csv) is { } other)
                throw new VerbException(ExitCode.NoInput, $"{csv} is {other}, not a file.");
            if (!File.Exists(csv))
                throw new VerbException(ExitCode.NoInput, $"There is no file {csv}.");
            var (house, scribe) = HouseSource.Open(parsed.GetRequiredValue(path), parsed.GetValue(by)!);
            using (house)
            {
                var roomName = parsed.GetValue(room) is { } named ? RoomFacts.Name.ReadTyped(named, scribe.House).OrEnd(ExitCode.Usage) : null;
                var plan = ScheduleImport.Plan(scribe.Log, ScheduleFile.Read(csv).OrEnd(ExitCode.BadData), Path.GetFileName(csv),
                    new ScheduleOptions(columns, roomName, parsed.GetValue(units))
                    {
                        Sheet = parsed.GetValue(sheet),
                        Encoding = parsed.GetValue(encoding),
                        Revised = parsed.GetValue(revised),
                    }).OrEnd(ExitCode.BadData);
                if (parsed.GetValue(gone) is not null && !parsed.GetValue(revised))
                    throw new VerbException(ExitCode.Usage, "--gone is for a revised schedule: add --revised.");
                plan = plan.Choosing(scribe.House, parsed.GetValue(leave) ?? [], parsed.GetValue(gone) switch
                {
                    "note" => GoneAs.Noted,
                    "leave-out" => GoneAs.LeftOut,
                    _ => GoneAs.Left,
                }, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)).OrEnd(ExitCode.Usage);
                Show(plan);
                if (parsed.GetValue(keep) is { } file)
                    Keep(plan, file);
                if (parsed.GetValue(dry))
                    Common.Say("Nothing was imported: this was a try.");
                else if (!plan.Changes && parsed.GetValue(revised))
                    Common.Say("Nothing was imported: the house has it all.");
                else if (!plan.Changes)
                    throw new VerbException(ExitCode.BadData, "No window could be read. Nothing was imported.");
                else
                    Common.Say($"Saved: {scribe.Record(plan.Draft).OrEnd(ExitCode.Disk).What}. {CheckReport.Of(scribe.House).Waiting}.");
                return plan.Problems.IsEmpty ? ExitCode.Fine : ExitCode.LeftOut;
            }
        });
        return verb;
    }

    private static ImmutableDictionary<ScheduleField, string> Named(IEnumerable<string> lines, string where)
    {
        var columns = ImmutableDictionary<ScheduleField, string>.Empty;
        foreach (var typed in lines)
        {
            var (field, header) = ScheduleOptions.ReadColumn(typed).OrEnd(ExitCode.Usage);
            if (columns.TryGetValue(field, out var before) && before != header)
                throw new VerbException(ExitCode.Usage, $"{where} names two columns for {field.Name}: {before} and {header}. Name one.");
            columns = columns.SetItem(field, header);
        }
        return columns;
    }

    private static IEnumerable<string> ColumnsIn(string? path)
    {
        if (path is null)
            return [];
        if (PlainFile.NameOf(path) is { } other)
            throw new VerbException(ExitCode.NoInput, $"{path} is {other}, not a file.");
        return !File.Exists(path) ? throw new VerbException(ExitCode.NoInput, $"There is no file {path}.")
            : Encoding.UTF8.GetString(PlainFile.ReadAll(path, MostOfColumns))
                .Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Where(l => !l.StartsWith('#'));
    }

    /// <summary>No list of columns is longer, in bytes.</summary>
    private const int MostOfColumns = 1 << 16;

    private static void Keep(SchedulePlan plan, string path)
    {
        if (PlainFile.NameOf(path) is { } other)
            throw new VerbException(ExitCode.CannotCreate, $"{path} is {other}, not a file.");
        if (File.Exists(path) && (new FileInfo(path).Length > MostOfColumns || ColumnsIn(path).Any(l => !ScheduleOptions.ReadColumn(l).Ok)))
            throw new VerbException(ExitCode.CannotCreate, $"{path} is there already and holds something else than columns. Nothing was imported.");
        OwnFile.Write(path, Encoding.UTF8.GetBytes(string.Concat(plan.Columns.Select(c => $"{c.Field.Name}={c.Name}{c.Said}\n"))));
        Common.Say($"Columns written to {path}.");
    }

    private static string Becomes(GoneAs gone) => gone switch
    {
        GoneAs.Noted => "noted as gone",
        GoneAs.LeftOut => "left out",
        _ => "left as they are",
    };

    private static void Show(SchedulePlan plan)
    {
        foreach (var window in plan.Windows)
            Common.Row($"{window.Tag}", $"{window.Room}", $"{window.Width}", $"{window.Height}");
        if (plan.Sheet is { } sheet)
            Common.Say($"Sheet: {sheet}.");
        Common.Say($"Columns: {string.Join("; ", plan.Columns.Select(c => $"{c.Field.Name} {c.From}"))}.");
        if (!plan.Unused.IsEmpty)
            Common.Say($"Not used: {string.Join(", ", plan.Unused)}.");
        if (!plan.NewRooms.IsEmpty)
            Common.Say($"New rooms: {string.Join(", ", plan.NewRooms)}.");
        foreach (var note in plan.Understood)
            Common.Say($"Understood: {note}.");
        foreach (var value in plan.Revised)
            Common.Say($"{value.Tag}, {value.Label}: {(value.Here.Length > 0 ? value.Here : "nothing")} here, {value.There} in the schedule. "
                + (value.KeptBecause is { } why ? $"Kept: {why}." : "Taken."));
        foreach (var gone in plan.Missing.GroupBy(t => plan.Gone == GoneAs.LeftOut && plan.Standing.ContainsKey(t) ? GoneAs.Noted : plan.Gone))
            Common.Say($"Not in this schedule, and {Becomes(gone.Key)}: {string.Join(", ", gone)}.");
        foreach (var (tag, there) in plan.Standing.OrderBy(s => plan.Missing.IndexOf(s.Key)))
            Common.Say($"{tag} is gone from the schedule, and {there}"
                + (plan.Gone == GoneAs.LeftOut ? ": leave it out on the job sheet if it is not wanted." : "."));
        foreach (var problem in plan.Problems)
            Common.Say(string.Create(CultureInfo.InvariantCulture,
                $"Line {problem.Line}, column {problem.Column}: {problem.Reason} {problem.Outcome}"));
        Common.Say($"{NumberText.Counted(plan.Windows.Length, "window")}, {NumberText.Counted(plan.Problems.Length, "thing")} that could not be read.");
    }
}

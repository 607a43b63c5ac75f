using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Schedules;

namespace TrimOut.Verbs;

/// <summary><c>trimout import</c>: windows from a schedule.</summary>
internal static class ImportVerb
{
    public static Command Build()
    {
        var path = Common.House();
        var schedule = new Argument<string>("SCHEDULE") { Description = "The window schedule, as CSV." };
        var room = new Option<string?>("--room") { Description = "The room of windows that have none.", HelpName = "name" };
        var units = new Option<string?>("--units") { Description = "The unit of bare numbers where a header names none; the house's own when left out." };
        units.AcceptOnlyFromAmong("in", "ft", "mm", "cm");
        var column = new Option<string[]>("--column")
        {
            Description = "Which column holds what, such as tag=Mark. " + string.Join("; ", ScheduleField.All.Select(f => $"{f.Name}: {f.Help}")) + ".",
            HelpName = "field=Header",
        };
        var dry = new Option<bool>("--try") { Description = "Only show what would be imported." };
        var by = Common.By();
        var verb = new Command("import", "Add the windows of a schedule to a house. Ends with 2 when something in it could not be read.") { path, schedule,
            room, units, column, dry, by };
        verb.SetAction(parsed =>
        {
            var columns = ImmutableDictionary<ScheduleField, string>.Empty;
            foreach (var typed in parsed.GetValue(column) ?? [])
            {
                var (field, header) = ScheduleOptions.ReadColumn(typed).OrEnd(ExitCode.Usage);
                columns = columns.SetItem(field, header);
            }
            var csv = parsed.GetRequiredValue(schedule);
            if (PlainFile.NameOf(csv) is { } other)
                throw new VerbException(ExitCode.NoInput, $"{csv} is {other}, not a file.");
            if (!File.Exists(csv))
                throw new VerbException(ExitCode.NoInput, $"There is no file {csv}.");
            var (house, scribe) = HouseSource.Open(parsed.GetRequiredValue(path), parsed.GetValue(by)!);
            using (house)
            {
                var roomName = parsed.GetValue(room) is { } named ? RoomFacts.Name.ReadTyped(named, scribe.House).OrEnd(ExitCode.Usage) : null;
                var plan = ScheduleImport.Plan(scribe.House, Bytes(csv), Path.GetFileName(csv),
                    new ScheduleOptions(columns, roomName, parsed.GetValue(units))).OrEnd(ExitCode.BadData);
                Show(plan);
                if (parsed.GetValue(dry))
                    Common.Say("Nothing was imported: this was a try.");
                else if (plan.Windows.IsEmpty)
                    throw new VerbException(ExitCode.BadData, "No window could be read. Nothing was imported.");
                else
                    Common.Say($"Saved: {scribe.Record(plan.Draft).OrEnd(ExitCode.Disk).What}. {CheckReport.Of(scribe.House).Waiting}.");
                return plan.Problems.IsEmpty ? ExitCode.Fine : ExitCode.LeftOut;
            }
        });
        return verb;
    }

    private static byte[] Bytes(string csv)
    {
        if (new FileInfo(csv).Length > ScheduleImport.MostBytes)
            throw new VerbException(ExitCode.BadData,
                $"{csv} has more than {ScheduleImport.MostBytes >> 20} MiB: that is no house's schedule. Nothing was imported.");
        return PlainFile.ReadAll(csv, ScheduleImport.MostBytes);
    }

    private static void Show(SchedulePlan plan)
    {
        foreach (var window in plan.Windows)
            Console.Out.WriteLine($"{window.Tag}\t{window.Room}\t{window.Width}\t{window.Height}");
        Common.Say($"Columns: {string.Join(", ", plan.Columns.Select(c => $"{c.Field.Name} from \"{c.Header}\""))}.");
        if (!plan.Unused.IsEmpty)
            Common.Say($"Not used: {string.Join(", ", plan.Unused)}.");
        if (!plan.NewRooms.IsEmpty)
            Common.Say($"New rooms: {string.Join(", ", plan.NewRooms)}.");
        foreach (var note in plan.Understood)
            Common.Say($"Understood: {note}.");
        foreach (var problem in plan.Problems)
            Common.Say(string.Create(CultureInfo.InvariantCulture,
                $"Line {problem.Line}, column {problem.Column}: {problem.Reason} {problem.Outcome}"));
        Common.Say($"{NumberText.Counted(plan.Windows.Length, "window")}, {NumberText.Counted(plan.Problems.Length, "thing")} that could not be read.");
    }
}

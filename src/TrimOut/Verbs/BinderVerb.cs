using System.CommandLine;
using System.Globalization;
using TrimOut.Desks;

namespace TrimOut.Verbs;

/// <summary><c>trimout binder</c>: the owner's binder.</summary>
internal static class BinderVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var folder = new Option<string>("--out") { Description = "The folder to write to.", HelpName = "folder", DefaultValueFactory = _ => "." };
        var date = new Option<string?>("--date") { Description = "The day that stands on it; today when left out.", HelpName = "yyyy-mm-dd" };
        var verb = new Command("binder", "Write the owner's binder, as Markdown and as one HTML page.") { path, folder, date };
        verb.SetAction(parsed =>
        {
            var house = HouseSource.Read(parsed.GetRequiredValue(path)).House;
            var stem = Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(Path.GetFullPath(parsed.GetRequiredValue(path))));
            foreach (var file in PaperFiles.Write("binder", house, Day(parsed.GetValue(date)), parsed.GetRequiredValue(folder), stem))
                Console.Out.WriteLine(file);
            return ExitCode.Fine;
        });
        return verb;
    }

    private static DateOnly Day(string? typed)
    {
        if (typed is null)
            return DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        return DateOnly.TryParseExact(typed, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw new VerbException(ExitCode.Usage, $"\"{typed}\" is no date. Write year-month-day, such as 2026-03-14.");
    }
}

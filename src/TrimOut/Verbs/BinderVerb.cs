using System.CommandLine;
using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Papers;

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
            var day = Day(parsed.GetValue(date));
            var report = CheckReport.Of(house);
            var stem = Path.Combine(parsed.GetRequiredValue(folder), Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(parsed.GetRequiredValue(path))) + "-binder");
            Directory.CreateDirectory(parsed.GetRequiredValue(folder));
            Write(stem + ".md", Binder.Markdown(house, day, report));
            Write(stem + ".html", Binder.Html(house, day, report));
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

    private static void Write(string path, string text)
    {
        // Beside it and then renamed, so that a full disk leaves the last binder as it was.
        File.WriteAllText(path + ".new", text);
        File.Move(path + ".new", path, overwrite: true);
        Console.Out.WriteLine(path);
    }
}

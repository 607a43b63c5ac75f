using System.CommandLine;
using TrimOut.Desks.Firm;
using TrimOut.Papers.FirmPapers;

namespace TrimOut.Verbs;

/// <summary><c>trimout firm-paper</c>: a paper over all houses of folders.</summary>
internal static class FirmPaperVerb
{
    public static Command Build()
    {
        var id = new Argument<string>("PAPER") { Description = string.Join(" ", FirmPaper.All.Select(p => $"{p.Id}: {p.About}")) };
        var places = FirmVerb.Places();
        var day = new Option<string?>("--date")
        {
            Description = "The day that stands on it, of a week its first one; today when left out.",
            HelpName = "yyyy-mm-dd",
        };
        var language = new Option<string?>("--language")
        {
            Description = "The language that it is written in: de or es. Files then have it in their names.",
            HelpName = "language",
        };
        var folder = new Option<string?>("--out") { Description = "The folder to write to; the one that you are in when left out.", HelpName = "folder" };
        var over = new Option<bool>("--overwrite")
        {
            Description = "Also write over files that TrimOut did not write, that were changed since, or that are over the houses of other folders.",
        };
        var verb = new Command("firm-paper", "Write a paper over all houses of folders, as Markdown and as one HTML page.")
        { id, places, day, language, folder, over };
        verb.SetAction((parsed, stop) => Task.Run(() =>
        {
            var paper = FirmPaper.All.FirstOrDefault(p => p.Id == parsed.GetValue(id)) ?? throw new VerbException(ExitCode.Usage,
                $"There is no paper over houses \"{parsed.GetValue(id)}\". There are: {string.Join(", ", FirmPaper.All.Select(p => p.Id))}.");
            var (rows, ends) = FirmVerb.Rows(parsed.GetValue(places), kept: false);
            foreach (var file in FirmPaperFiles.Write(paper, rows, [], ChosenHouses.In(parsed.GetValue(places) ?? []),
                PaperVerb.Day(parsed.GetValue(day)), parsed.GetValue(language), parsed.GetValue(folder) ?? ".", _ => parsed.GetValue(over), stop)
                .OrEnd(ExitCode.Usage))
                Console.Out.WriteLine(file);
            return ends;
        }, CancellationToken.None));
        return verb;
    }
}

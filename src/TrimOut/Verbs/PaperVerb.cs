using System.CommandLine;
using System.Globalization;
using TrimOut.Desks;
using TrimOut.HouseFile.Files;
using TrimOut.Papers;
using TrimOut.Papers.Labels;
using TrimOut.Papers.Templates;

namespace TrimOut.Verbs;

/// <summary><c>trimout binder</c>, <c>trimout paper</c> and <c>trimout papers</c>: papers of a house.</summary>
internal static class PaperVerb
{
    private const int LargestTemplate = 4 << 20;

    public static Command BuildBinder()
    {
        var verb = new Command("binder", "Write the owner's binder, as Markdown and as one HTML page.");
        Complete(verb, _ => Binder.Paper.Id);
        return verb;
    }

    public static Command Build()
    {
        var id = new Argument<string>("PAPER") { Description = string.Join("; ", PaperList.All.Select(p => $"{p.Id}: for {p.Reader}")) + "." };
        var verb = new Command("paper", "Write a paper, as Markdown and as one HTML page, and as CSV where it is a table.");
        Complete(verb, parsed => parsed.GetRequiredValue(id), id);
        return verb;
    }

    public static Command BuildAll()
    {
        var path = Common.AnyHouse();
        var (folder, date, ownerOnly, over) = Options();
        var (labels, language, print) = (LabelSheet(), Language(), new PrintOptions());
        var verb = new Command("papers", "Write every paper, one after the other. Ctrl-C stops between two: what is there is whole.") { path, folder,
            date, ownerOnly, over, labels, language, print.Pdf, print.Size, print.Browser, Common.GoOn };
        verb.SetAction((parsed, stop) =>
        {
            var house = parsed.GetRequiredValue(path);
            var look = Look.By(parsed);
            var said = parsed.GetValue(language);
            var data = On(parsed.GetValue(labels), parsed.GetValue(print.Size), PaperData.Of(look.At(house), Day(parsed.GetValue(date))) with
            {
                OwnerOnly = parsed.GetValue(ownerOnly),
                FilesOf = StemOf(house, said),
                InDoubt = look.InDoubt,
                Photos = PhotoFiles.Of(house).Read,
                Stop = stop,
            });
            var pdf = print.Printer(parsed, data);
            var to = FolderFor(house, parsed.GetValue(folder));
            return Task.Run(() => look.End(WriteAll(data, to, parsed.GetValue(over), said, pdf)), CancellationToken.None);
        });
        return verb;
    }

    /// <summary>Names on standard output what is written, and says on standard error how far it is.</summary>
    private static int WriteAll(PaperData data, string folder, bool overAnything, string? language, Func<WrittenPaper, byte[]>? pdf)
    {
        var papers = language is null ? PaperList.All : [.. PaperList.All.Where(p => PaperTemplate.IsIn(p, language))];
        if (papers.Count == 0)
            _ = PaperTemplate.In(Binder.Paper, language!).OrEnd(ExitCode.Usage);
        if (papers.Count < PaperList.All.Count)
            Common.Say($"Not in \"{language}\": {string.Join(", ", PaperList.All.Except(papers).Select(p => p.Id))}.");
        try
        {
            foreach (var file in PaperFiles.WriteAll(papers, data, folder, Common.Say, WrittenPapers.OfUser, _ => overAnything,
                p => language is null ? null : PaperTemplate.In(p, language).OrEnd(ExitCode.Usage), pdf))
                Console.Out.WriteLine(file);
            return ExitCode.Fine;
        }
        catch (OperationCanceledException)
        {
            Common.Say("Stopped. The papers that were named are whole; the others were not begun.");
            return ExitCode.Stopped;
        }
    }

    private static (Option<string?> Folder, Option<string?> Date, Option<bool> OwnerOnly, Option<bool> Over) Options() => (
        new Option<string?>("--out") { Description = "The folder to write to; that of the house file when left out.", HelpName = "folder" },
        new Option<string?>("--date") { Description = "The day that stands on it; today when left out.", HelpName = "yyyy-mm-dd" },
        new Option<bool>("--owner-only") { Description = "Leave out what only the trade needs." },
        new Option<bool>("--overwrite") { Description = "Also write over files that TrimOut did not write, or that were changed since." });

    private static void Complete(Command verb, Func<ParseResult, string> which, Argument<string>? id = null)
    {
        var path = Common.AnyHouse();
        var (folder, date, ownerOnly, over) = Options();
        var template = new Option<string?>("--template") { Description = "A template for its order, headings and words.", HelpName = "file" };
        var (labels, language) = (LabelSheet(), Language());
        var show = new Option<bool>("--show-template") { Description = "Write TrimOut's own template to standard output instead, to begin from." };
        var print = new PrintOptions();
        verb.Add(path);
        if (id is not null)
        {
            verb.Add(id);
            verb.Add(labels);
        }
        foreach (var option in new Option[] { folder, date, template, language, show, ownerOnly, over, print.Pdf, print.Size, print.Browser, Common.GoOn })
            verb.Add(option);
        verb.SetAction((parsed, stop) => Task.Run(() =>
        {
            var paper = PaperFiles.Find(which(parsed)).OrEnd(ExitCode.Usage);
            if (parsed.GetValue(show))
            {
                Console.Out.Write(PaperTemplate.Default(paper));
                return ExitCode.Fine;
            }
            var house = parsed.GetRequiredValue(path);
            var look = Look.By(parsed);
            var said = parsed.GetValue(language);
            if (said is not null && parsed.GetValue(template) is not null)
                throw new VerbException(ExitCode.Usage, "A template says its own language. Give --template or --language, not both.");
            var grid = id is null ? null : parsed.GetValue(labels);
            var data = On(grid, parsed.GetValue(print.Size), PaperData.Of(look.At(house), Day(parsed.GetValue(date))) with
            {
                OwnerOnly = parsed.GetValue(ownerOnly),
                FilesOf = StemOf(house, said),
                InDoubt = look.InDoubt,
                Photos = PhotoFiles.Of(house).Read,
                Stop = stop,
            });
            var by = said is not null ? PaperTemplate.In(paper, said).OrEnd(ExitCode.Usage)
                : parsed.GetValue(template) is { } file ? PaperTemplate.Read(paper, Template(file)).OrEnd(ExitCode.BadData) : null;
            return look.End(WriteOne(() => PaperFiles.Write(paper, data, by, FolderFor(house, parsed.GetValue(folder)), WrittenPapers.OfUser,
                _ => parsed.GetValue(over), print.Printer(parsed, data))));
        }, CancellationToken.None));
    }

    private static int WriteOne(Func<IReadOnlyList<string>> write)
    {
        try
        {
            foreach (var written in write())
                Console.Out.WriteLine(written);
            return ExitCode.Fine;
        }
        catch (OperationCanceledException)
        {
            Common.Say("Stopped. Nothing was written.");
            return ExitCode.Stopped;
        }
    }

    private static Option<string?> Language() => new("--language")
    {
        Description = "The language that it is written in, where TrimOut has its words: de or es. Files then have it in their names.",
        HelpName = "language",
    };

    /// <summary>One language does not write over the files of another.</summary>
    private static string StemOf(string house, string? language) => language is null ? PaperFiles.StemOf(house) : $"{PaperFiles.StemOf(house)}-{language}";

    private static Option<string?> LabelSheet() => new("--label-sheet")
    {
        Description = "How labels lie on their sheets: rows x columns, such as 10x3 for a common one, with letter or a4, and top=, bottom=, left=, right=, " +
            "across= and down= in millimeters where it is another; left out: plain paper to be cut.",
        HelpName = "sheet",
    };

    private static PaperData On(string? labelSheet, string? size, PaperData data) => (labelSheet, size) switch
    {
        ({ } sheet, _) => data with { Labels = LabelGrid.Read(sheet).OrEnd(ExitCode.Usage) },
        (null, { } named) => data with { Labels = LabelGrid.Plain(letter: PrintOptions.Named(named) == SheetSize.Letter) },
        _ => data,
    };

    private static string Template(string file)
    {
        using var text = new StreamReader(new MemoryStream(PlainFile.ReadAll(file, LargestTemplate)));
        return text.ReadToEnd();
    }

    /// <summary>The folder to write to: of a house file its own, as on the screens; of a history as text the one that somebody is in.</summary>
    private static string FolderFor(string house, string? asked) =>
        asked ?? (HouseSource.IsSample(house) || Path.GetDirectoryName(house) is not { Length: > 0 } beside ? "." : beside);

    /// <summary>A day that was given on the command line; today where none was.</summary>
    internal static DateOnly Day(string? typed)
    {
        if (typed is null)
            return DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        return DateOnly.TryParseExact(typed, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : throw new VerbException(ExitCode.Usage, $"\"{typed}\" is no date. Write year-month-day, such as 2026-03-14.");
    }
}

using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Papers;
using TrimOut.Papers.Labels;
using TrimOut.Printing;
using TrimOut.Screens.Shell;
using TrimOut.Verbs;

namespace TrimOut.Desks;

/// <summary>Papers for the screens: what was worked out for a house is kept for its next paper.</summary>
internal sealed class PaperDesk
{
    private PaperData? _data;

    /// <summary>How many saves of the house that is open are in doubt at the least; 0 where nobody knows how many, null where none is.</summary>
    public long? InDoubt { get; set; }

    /// <summary>How labels lie on their sheets; null for plain paper, to be cut.</summary>
    public LabelGrid? Labels { get; set; }

    /// <summary>A paper as it will be, part by part.</summary>
    public Result<IReadOnlyList<PreviewBlock>> Preview(string paper, PaperHouse house, CancellationToken stop) =>
        PaperFiles.Find(paper).Then<IReadOnlyList<PreviewBlock>>(found =>
            found.Write(Data(house, stop) with { Photos = null }).Blocks().Select(Shown).ToList());

    /// <summary>Writes papers beside the house file.</summary>
    public Result<PapersWritten> Write(IReadOnlyList<string> papers, bool pdf, PaperHouse house, Action<string> says, IReadOnlySet<string> over,
        CancellationToken stop)
    {
        var files = new List<string>();
        try
        {
            var printer = pdf ? Browser.OnScreens().Printer(Sheets(house), stop) : null;
            foreach (var file in PaperFiles.WriteAll([.. papers.Select(p => PaperFiles.Find(p).Value)], Data(house, stop),
                Path.GetDirectoryName(house.Where)!, says, WrittenPapers.OfUser, over.Contains, pdf: printer))
                files.Add(file);
            return new PapersWritten(files, []);
        }
        catch (NotOverwrittenException refused) when (refused.NotOurs.Count > 0)
        {
            return new PapersWritten(files, refused.NotOurs);
        }
        catch (OperationCanceledException)
        {
            return new Refusal($"Stopped. {Count(files)}; the papers that are there are whole.");
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or VerbException)
        {
            return new Refusal($"{failed.Message} {Count(files)}.");
        }
    }

    private static SheetSize Sheets(PaperHouse house) => PrintOptions.UsualFor(house.Log.House.DisplayUnits);

    private static string Count(List<string> files) => files.Count switch
    {
        0 => "Nothing was written",
        1 => "1 file was written",
        var n =>
        $"{n} files were written"
    };

    private PaperData Data(PaperHouse house, CancellationToken stop)
    {
        if (_data is null || !ReferenceEquals(_data.Log, house.Log))
            _data = new PaperData(house.Log, house.Date, house.Report())
            {
                FilesOf = PaperFiles.StemOf(house.Where),
                Photos = PhotoFiles.Of(house.Where).Read,
            };
        return _data = _data with
        {
            Date = house.Date,
            InDoubt = InDoubt,
            Stop = stop,
            Labels = Labels ?? LabelGrid.Plain(house.Log.House.DisplayUnits),
        };
    }

    private static PreviewBlock Shown(PaperBlock block) => new(
        block.Kind switch
        {
            PaperBlockKind.Heading => PreviewKind.Heading,
            PaperBlockKind.Item => PreviewKind.Item,
            PaperBlockKind.Table => PreviewKind.Table,
            _ => PreviewKind.Paragraph,
        },
        block.Level, block.Mark, [.. block.Text.Select(Shown)],
            [.. block.Rows.Select(r => r.Select(c => c.Select(Shown).ToImmutableArray()).ToImmutableArray())]);

    private static PreviewText Shown(PaperText text) => new(text.Text, text.Strong, text.Picture);
}

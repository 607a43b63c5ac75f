using TrimOut.Core.Checks;
using TrimOut.Desks;
using TrimOut.Papers.Labels;
using TrimOut.Printing;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Tests.Papers;

/// <summary>What the verbs can do with papers the screens can do too: a PDF, and labels for the sheets that are at hand.</summary>
public sealed class PapersOfScreensTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-screens-papers-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private PaperHouse House()
    {
        var log = SampleHouse.Open("canal-house", TimeProvider.System).Log;
        return new PaperHouse(log, () => CheckReport.Of(log.House), Path.Combine(_folder, "canal.trimout"), new DateOnly(2026, 9, 30));
    }

    private Core.Result<PapersWritten> Write(PaperDesk desk, string paper, bool pdf) =>
        desk.Write([paper], pdf, House(), _ => { }, new HashSet<string>(), CancellationToken.None);

    [Fact]
    public void APaperIsWrittenAsPdfWhereABrowserIsAndElseItIsSaidWhatToDo()
    {
        var written = Write(new PaperDesk(), "card", pdf: true);
        if (BrowserSearch.Find() is null)
        {
            Assert.Contains("No browser was found", written.Reason, StringComparison.Ordinal);
            Assert.Empty(Directory.EnumerateFiles(_folder));
            return;
        }
        var pdf = Assert.Single(written.Value.Files, f => f.EndsWith(".pdf", StringComparison.Ordinal));
        Assert.Equal("%PDF"u8.ToArray(), File.ReadAllBytes(pdf)[..4]);
    }

    [Fact]
    public void WithoutTheKeyForItThereIsNoPdf() =>
        Assert.DoesNotContain(Write(new PaperDesk(), "card", pdf: false).Value.Files, f => f.EndsWith(".pdf", StringComparison.Ordinal));

    [Theory]
    [InlineData(null, "8 rows of 2")]
    [InlineData("10x3,letter", "10 rows of 3")]
    [InlineData("8x3,a4", "8 rows of 3")]
    public void LabelsAreWrittenForTheSheetThatWasChosen(string? sheet, string said)
    {
        var desk = new PaperDesk { Labels = sheet is null ? null : LabelGrid.Read(sheet).Value };
        var page = Write(desk, "labels", pdf: false).Value.Files.Single(f => f.EndsWith(".md", StringComparison.Ordinal));
        Assert.Contains(said, File.ReadAllText(page), StringComparison.Ordinal);
    }

    [Fact]
    public void EveryCommonSheetIsReadAgainAsItIsTypedAndSaysHowLargeItsLabelsAre() => Assert.All(LabelGrid.Common, grid =>
    {
        Assert.Equal(grid, LabelGrid.Read(grid.Typed).Value);
        Assert.Contains($"{grid.OnASheet} labels of ", grid.InWords, StringComparison.Ordinal);
    });
}

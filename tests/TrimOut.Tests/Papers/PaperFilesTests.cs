using System.Text.RegularExpressions;
using TrimOut.Core.Checks;
using TrimOut.Desks;
using TrimOut.Papers;
using TrimOut.Testing;

namespace TrimOut.Tests.Papers;

public sealed class PaperFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-papers-").FullName;

    [Theory]
    [InlineData("ridge", "canal")]
    [InlineData("Haus Süd (2)", "Haus Nord [1]")]
    public void TwoHousesInOneFolderKeepTheirOwnDrawings(string one, string other)
    {
        var first = PaperFiles.Write(Binder.Paper, Data("W01", one), null, _folder);
        var before = first.ToDictionary(f => f, File.ReadAllText);
        var second = PaperFiles.Write(Binder.Paper, Data("X99", other), null, _folder);
        Assert.Empty(first.Intersect(second));
        Assert.All(before, f => Assert.Equal(f.Value, File.ReadAllText(f.Key)));
    }

    [Theory]
    [InlineData("plain")]
    [InlineData("Haus Süd (2) [a] & <b> 100%")]
    public void EveryPictureOfTheMarkdownIsAFileBesideIt(string house)
    {
        foreach (var paper in PaperList.All)
        {
            var files = PaperFiles.Write(paper, Data("W01", house), null, _folder);
            var links = Regex.Matches(File.ReadAllText(files.Single(f => f.EndsWith(".md", StringComparison.Ordinal))), @"!\[[^\]]*\]\((?<to>[^)]*)\)")
                .Select(m => m.Groups["to"].Value).ToList();
            Assert.All(links, l => Assert.True(File.Exists(Path.Combine(_folder, Uri.UnescapeDataString(l))), l));
            Assert.Equal(links.Count, files.Count(f => f.EndsWith(".svg", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void WritingThatIsStoppedLeavesWholePapersAndNoOthers()
    {
        using var stop = new CancellationTokenSource();
        var data = Data("W01", "house") with { Stop = stop.Token };
        var written = new List<string>();
        Assert.Throws<OperationCanceledException>(() =>
        {
            foreach (var file in PaperFiles.WriteAll(PaperList.All, data, _folder, says =>
            {
                if (says.StartsWith("3 of", StringComparison.Ordinal))
                    stop.Cancel();
            }))
                written.Add(file);
        });
        Assert.Equal(written.Order(), Directory.EnumerateFiles(_folder, "*", SearchOption.AllDirectories).Order());
        Assert.Equal(PaperList.All.Take(2).Select(p => $"house-{p.Id}.html"),
            written.Where(f => f.EndsWith(".html", StringComparison.Ordinal)).Select(Path.GetFileName));
        Assert.All(written.Where(f => f.EndsWith(".html", StringComparison.Ordinal)),
            f => Assert.EndsWith("</html>\n", File.ReadAllText(f), StringComparison.Ordinal));
    }

    [Fact]
    public void OneVerbWritesEveryPaperAndSaysHowFarItIs()
    {
        using var program = new RunTrimOut();
        var run = program.Run("papers", Path.Combine(Repository.Root, "sample-jobs", "orchard-cottage"), "--out", _folder, "--date", "2026-09-30");
        Assert.Equal(0, run.Code);
        Assert.All(PaperList.All, p => Assert.Contains($"orchard-cottage-{p.Id}.html", run.Output, StringComparison.Ordinal));
        Assert.Contains($"{PaperList.All.Count} of {PaperList.All.Count}, ", run.Error, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static PaperData Data(string tag, string files)
    {
        var log = new TestJob().Room("Kitchen", "Main").Window(tag).Scribe.Log;
        return new PaperData(log, new DateOnly(2026, 9, 30), CheckReport.Of(log.House)) { FilesOf = files };
    }
}

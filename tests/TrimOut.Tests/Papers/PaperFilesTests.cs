using System.Text.RegularExpressions;
using TrimOut.Core.Checks;
using TrimOut.Desks;
using TrimOut.Papers;
using TrimOut.Testing;

namespace TrimOut.Tests.Papers;

public sealed class PaperFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-papers-").FullName;
    private readonly string _own = Directory.CreateTempSubdirectory("trimout-own-").FullName;
    private readonly WrittenPapers _before;

    public PaperFilesTests() => _before = new WrittenPapers(Path.Combine(_own, "papers-written"));

    [Theory]
    [InlineData("ridge", "canal")]
    [InlineData("Haus Süd (2)", "Haus Nord [1]")]
    public void TwoHousesInOneFolderKeepTheirOwnDrawings(string one, string other)
    {
        var first = PaperFiles.Write(Binder.Paper, Data("W01", one), null, _folder, _before);
        var before = first.ToDictionary(f => f, File.ReadAllText);
        var second = PaperFiles.Write(Binder.Paper, Data("X99", other), null, _folder, _before);
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
            var files = PaperFiles.Write(paper, Data("W01", house), null, _folder, _before);
            var links = Regex.Matches(File.ReadAllText(files.Single(f => f.EndsWith(".md", StringComparison.Ordinal))), @"!\[[^\]]*\]\((?<to>[^)]*)\)")
                .Select(m => m.Groups["to"].Value).ToList();
            Assert.All(links, l => Assert.True(File.Exists(Path.Combine(_folder, Uri.UnescapeDataString(l))), l));
            Assert.Equal(links.Count, files.Count(f => f.EndsWith(".svg", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void WhenAPaperWasWrittenAndHowFarTheHistoryWasSeenIsRemembered()
    {
        var data = Data("W01", "house");
        var page = PaperFiles.Write(Binder.Paper, data, null, _folder, _before).Single(f => f.EndsWith(".html", StringComparison.Ordinal));
        var house = Path.Combine(_folder, "house.trimout");
        var choices = PaperFiles.WrittenBeside(house, _before);
        var written = choices.Single(c => c.Id == Binder.Paper.Id).Written!;
        Assert.Equal(data.Log.Extent, written.Extent);
        Assert.Equal(File.GetLastWriteTimeUtc(page), written.At.UtcDateTime);
        Assert.All(choices.Where(c => c.Id != Binder.Paper.Id), c => Assert.Null(c.Written));
        File.Delete(page);
        Assert.All(PaperFiles.WrittenBeside(house, _before), c => Assert.Null(c.Written));
    }

    [Fact]
    public void APaperOfAnotherHouseIsNotWrittenOver()
    {
        var first = PaperFiles.Write(Binder.Paper, Data("W01", "house"), null, _folder, _before);
        var before = first.ToDictionary(f => f, File.ReadAllText);
        var other = Data("X99", "house", device: "elsewhere");
        var refused = Assert.Throws<NotOverwrittenException>(() => PaperFiles.Write(Binder.Paper, other, null, _folder, _before));
        Assert.Contains("a paper of another house", refused.Message);
        Assert.All(before, f => Assert.Equal(f.Value, File.ReadAllText(f.Key)));
        PaperFiles.Write(Binder.Paper, Data("W02", "house"), null, _folder, _before);
    }

    [Fact]
    public void AReadOnlyPaperIsLeftAsItIs()
    {
        var page = PaperFiles.Write(Binder.Paper, Data("W01", "house"), null, _folder, _before).Single(f => f.EndsWith(".html", StringComparison.Ordinal));
        var before = File.ReadAllText(page);
        File.SetAttributes(page, File.GetAttributes(page) | FileAttributes.ReadOnly);
        var refused = Assert.Throws<NotOverwrittenException>(() =>
            PaperFiles.Write(Binder.Paper, Data("W02", "house"), null, _folder, _before, over: _ => true));
        Assert.Contains("is marked read-only", refused.Message);
        Assert.Equal(before, File.ReadAllText(page));
        File.SetAttributes(page, FileAttributes.Normal);
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
            }, _before))
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

    [Theory]
    [InlineData("house-binder.md")]
    [InlineData("house-binder.html")]
    public void AFileThatTrimOutDidNotWriteIsLeftUnlessAskedFor(string name)
    {
        File.WriteAllText(Path.Combine(_folder, name), "mine");
        var refused = Assert.Throws<NotOverwrittenException>(() => PaperFiles.Write(Binder.Paper, Data("W01", "house"), null, _folder, _before));
        Assert.Contains(name, refused.Message, StringComparison.Ordinal);
        Assert.Equal([name], Directory.GetFileSystemEntries(_folder).Select(Path.GetFileName));
        Assert.Equal("mine", File.ReadAllText(Path.Combine(_folder, name)));
        PaperFiles.Write(Binder.Paper, Data("W01", "house"), null, _folder, _before, _ => true);
        Assert.NotEqual("mine", File.ReadAllText(Path.Combine(_folder, name)));
    }

    [Fact]
    public void WhatTrimOutWroteIsWrittenOverAndWhatWasChangedSinceIsNot()
    {
        PaperFiles.Write(Binder.Paper, Data("W01", "house"), null, _folder, _before);
        PaperFiles.Write(Binder.Paper, Data("W02", "house"), null, _folder, _before);
        var page = Path.Combine(_folder, "house-binder.md");
        Assert.Contains("W02", File.ReadAllText(page), StringComparison.Ordinal);
        File.AppendAllText(page, "A note by hand");
        Assert.Throws<NotOverwrittenException>(() => PaperFiles.Write(Binder.Paper, Data("W03", "house"), null, _folder, _before));
        Assert.EndsWith("A note by hand", File.ReadAllText(page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("house-binder.md", false)]
    [InlineData("house-drawings", true)]
    public void NothingIsWrittenThroughALink(string name, bool isFolder)
    {
        if (OperatingSystem.IsWindows())
            return;
        var target = Path.Combine(_own, "target");
        if (isFolder)
            Directory.CreateDirectory(target);
        File.CreateSymbolicLink(Path.Combine(_folder, name), target);
        var refused = Assert.Throws<NotOverwrittenException>(() =>
            PaperFiles.Write(Binder.Paper, Data("W01", "house"), null, _folder, _before, _ => true));
        Assert.Contains("is a link to", refused.Message, StringComparison.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(_folder));
        Assert.False(isFolder ? Directory.EnumerateFileSystemEntries(target).Any() : File.Exists(target));
    }

    [Fact]
    public void TheVerbSaysWhatIsInTheWayAndWritesOverItWhenAsked()
    {
        using var program = new RunTrimOut();
        var house = Path.Combine(Repository.Root, "sample-jobs", "orchard-cottage");
        File.WriteAllText(program.In("orchard-cottage-labels.md"), "mine");
        var run = program.Run("paper", house, "labels");
        Assert.Equal(73, run.Code);
        Assert.Contains("orchard-cottage-labels.md is there already", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, program.Run("paper", house, "labels", "--overwrite").Code);
        Assert.Equal(0, program.Run("paper", house, "labels", "--date", "2026-01-02").Code);
    }

    public void Dispose()
    {
        Directory.Delete(_folder, recursive: true);
        Directory.Delete(_own, recursive: true);
    }

    private static PaperData Data(string tag, string files, string device = "laptop")
    {
        var log = new TestJob(store: new MemoryStore(device)).Room("Kitchen", "Main").Window(tag).Scribe.Log;
        return new PaperData(log, new DateOnly(2026, 9, 30), CheckReport.Of(log.House)) { FilesOf = files };
    }
}

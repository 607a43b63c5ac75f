using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using TrimOut.Papers.Tests;
using TrimOut.Printing;
using UglyToad.PdfPig;

namespace TrimOut.Tests.Printing;

/// <summary>What a browser is let do, and what is said where there is none.</summary>
public sealed class BrowserTests : IDisposable
{
    private readonly RunTrimOut _trimout = new();

    public void Dispose() => _trimout.Dispose();

    [Fact]
    public void WhereNoBrowserIsItIsSaidWhatToDoAndNothingIsWritten()
    {
        Assert.Null(BrowserSearch.Find("", _ => false));
        var ended = _trimout.Run("papers", Sample, "--out", _trimout.In("out"), "--pdf", "--browser", _trimout.In("nothing"));
        Assert.Equal(69, ended.Code);
        Assert.Contains("Name the program of a browser with --browser", ended.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_trimout.In("out")));
    }

    [Fact]
    public void TheSearchPathGoesFirstAndOnlyWholePathsOfItCount()
    {
        if (OperatingSystem.IsWindows())
            return;
        Assert.Equal("/b/chromium", BrowserSearch.Find("/a:bin:/b", p => p is "/b/chromium" or "bin/chromium"));
    }

    [Fact]
    public void AProgramThatIsNoBrowserIsNamedAndNothingIsWritten()
    {
        File.WriteAllText(_trimout.In("note.txt"), "no program");
        var ended = _trimout.Run("paper", Sample, "card", "--out", _trimout.In("out"), "--pdf", "--browser", _trimout.In("note.txt"));
        Assert.Equal(69, ended.Code);
        Assert.Contains("note.txt can't be started", ended.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_trimout.In("out")));
    }

    [Fact]
    public void ABrowserThatDoesNotEndIsStopped()
    {
        if (OperatingSystem.IsWindows())
            return;
        var script = _trimout.In("slow");
        File.WriteAllText(script, "#!/bin/sh\nsleep 60\n");
        File.SetUnixFileMode(script, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        var time = Stopwatch.StartNew();
        var failed = Assert.Throws<VerbException>(() => new Browser(script, TimeSpan.FromMilliseconds(300)).Print("<p>", CancellationToken.None));
        Assert.Contains("was stopped", failed.Message, StringComparison.Ordinal);
        Assert.True(time.Elapsed < TimeSpan.FromSeconds(20));
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(300));
        Assert.Throws<OperationCanceledException>(() => new Browser(script, TimeSpan.FromMinutes(1)).Print("<p>", stop.Token));
    }

    [ChromiumFact]
    public void APaperIsWrittenAsPdfBesideItsPageAndAgainOverItself()
    {
        string[] command = ["paper", Sample, "card", "--out", _trimout.In("out"), "--date", "2026-09-30", "--pdf", "--size", "a4"];
        for (var times = 0; times < 2; times++)
        {
            var ended = _trimout.Run(command);
            Assert.Equal((0, ""), (ended.Code, ended.Error));
            Assert.Contains("orchard-cottage-card.pdf", ended.Output, StringComparison.Ordinal);
        }
        using var pdf = PdfDocument.Open(_trimout.In("out/orchard-cottage-card.pdf"));
        // 210 mm and 297 mm in points.
        Assert.Equal(210 / 25.4 * 72, pdf.GetPage(1).Width, 1.0);
        Assert.Equal(297 / 25.4 * 72, pdf.GetPage(1).Height, 1.0);
    }

    /// <summary>A page with all that TrimOut's never has: a script that would write, and pictures from this machine and from a name.</summary>
    [ChromiumFact]
    public void ThePrintFetchesNothing()
    {
        using var server = new TcpListener(IPAddress.Loopback, 0);
        server.Start();
        var port = ((IPEndPoint)server.LocalEndpoint).Port;
        var asked = false;
        server.AcceptTcpClientAsync().ContinueWith(_ => asked = true, TaskContinuationOptions.OnlyOnRanToCompletion);
        var printed = new Browser(ChromiumFactAttribute.Browser!, Browser.Limit).Print(
            $"<p>Printed</p><img src=\"http://127.0.0.1:{port}/a.png\"><img src=\"http://localhost:{port}/b.png\"><link rel=\"stylesheet\" " +
            $"href=\"http://picture.example:{port}/c.css\">", CancellationToken.None);
        using var pdf = PdfDocument.Open(printed);
        Assert.Contains("Printed", pdf.GetPage(1).Text, StringComparison.Ordinal);
        Assert.False(asked);
    }

    /// <summary>TrimOut's pages forbid scripts; a script that got into one writes nothing.</summary>
    [ChromiumFact]
    public void AScriptThatGotIntoAPageDoesNotRun()
    {
        var page = new TrimOut.Papers.WrittenPaper("x", "x", "en", "# Printed\n", new Dictionary<string, string>()).ToHtml()
            .Replace("</main>", "<script>document.body.textContent = 'Written'</script></main>", StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(new Browser(ChromiumFactAttribute.Browser!, Browser.Limit).Print(page, CancellationToken.None));
        Assert.Contains("Printed", pdf.GetPage(1).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Written", pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    private static string Sample => Path.Combine(TrimOut.Testing.Repository.Root, "sample-jobs", "orchard-cottage");
}

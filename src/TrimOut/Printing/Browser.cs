using System.ComponentModel;
using System.Diagnostics;
using TrimOut.Papers;

namespace TrimOut.Printing;

/// <summary>A browser of the Chromium family that prints a page without a window.</summary>
/// <remarks>
/// The page is TrimOut's own and holds no script; it forbids them and all loading besides. The browser is told to find no name and no address, has a profile of
/// its own for the time of one print, and is stopped with all its children when it takes too long.
/// </remarks>
/// <param name="program">Its program.</param>
/// <param name="limit">How long one print may take.</param>
/// <param name="otherwise">What to do where it fails; null for what the options of a verb can do.</param>
internal sealed class Browser(string program, TimeSpan limit, string? otherwise = null)
{
    private const string WithoutScreens = "Print the HTML page from any browser, or name the program of one: trimout paper --pdf --browser.";

    /// <summary>How long a print may take where nobody says otherwise: a book of 500 windows takes some seconds.</summary>
    public static readonly TimeSpan Limit = TimeSpan.FromMinutes(2);

    private const string NoBrowser = "No browser was found that prints PDF. Install Chromium, Chrome or Edge, or name the program of one with --browser. " +
        "Without one, write the papers without --pdf and print the HTML pages from any browser.";

    /// <summary>The browser that was named, else the first that is found.</summary>
    /// <param name="named">The path of its program, as the user gave it; null to look for one.</param>
    /// <exception cref="VerbException">There is none.</exception>
    public static Browser Find(string? named) => named is not null && !File.Exists(named)
        ? throw new VerbException(ExitCode.NoProgram, $"There is no program {named}. Name the program of a browser with --browser, or leave it out.")
        : new Browser(named is not null ? Path.GetFullPath(named) : BrowserSearch.Find() ?? throw new VerbException(ExitCode.NoProgram, NoBrowser), Limit);

    /// <summary>The first that is found, for the screens, which have no options.</summary>
    /// <exception cref="VerbException">There is none.</exception>
    public static Browser OnScreens() => BrowserSearch.Find() is { } found ? new Browser(found, Limit, WithoutScreens)
        : throw new VerbException(ExitCode.NoProgram, "No browser was found that prints PDF: Chromium, Chrome or Edge. "
            + "w writes the paper without it. " + WithoutScreens);

    /// <summary>Makes papers PDF.</summary>
    /// <param name="size">The sheets.</param>
    /// <param name="stop">Stops it.</param>
    public Func<WrittenPaper, byte[]> Printer(SheetSize size, CancellationToken stop) => new PdfPrinter(size, html => Print(html, stop)).Print;

    /// <summary>Prints a page.</summary>
    /// <param name="html">The page, which needs no other file.</param>
    /// <param name="stop">Stops it.</param>
    /// <returns>The PDF, with a bookmark for each heading.</returns>
    /// <exception cref="VerbException">The browser can't be started, wrote no PDF, or took too long.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public byte[] Print(string html, CancellationToken stop)
    {
        var folder = Directory.CreateTempSubdirectory("trimout-print-");
        try
        {
            var (page, pdf) = (Path.Combine(folder.FullName, "page.html"), Path.Combine(folder.FullName, "page.pdf"));
            File.WriteAllText(page, html);
            string[] options =
            [
                $"--user-data-dir={Path.Combine(folder.FullName, "profile")}", "--no-pdf-header-footer", "--generate-pdf-document-outline",
                $"--print-to-pdf={pdf}", new Uri(page).AbsoluteUri,
            ];
            Run(options, stop);
            return File.Exists(pdf) && File.ReadAllBytes(pdf) is [(byte)'%', (byte)'P', (byte)'D', (byte)'F', ..] printed
                ? printed
                : throw Failed("printed nothing");
        }
        finally
        {
            Remove(folder);
        }
    }

    private void Run(string[] options, CancellationToken stop)
    {
        string[] always =
        [
            "--headless", "--disable-gpu", "--no-first-run", "--no-default-browser-check", "--disable-extensions", "--disable-sync",
            "--disable-background-networking", "--disable-component-update", "--disable-dev-shm-usage", "--host-resolver-rules=MAP * ~NOTFOUND",
        ];
        // A browser refuses to run as root inside its sandbox; as anybody else it stays in it.
        string[] asRoot = OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess ? ["--no-sandbox"] : [];
        using var process = Start([.. always, .. asRoot, .. options]);
        // Read to the end, so that it never waits for somebody to read.
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        var ended = Stopwatch.StartNew();
        while (!process.WaitForExit(TimeSpan.FromMilliseconds(50)))
        {
            if (!stop.IsCancellationRequested && ended.Elapsed < limit)
                continue;
            process.Kill(entireProcessTree: true);
            stop.ThrowIfCancellationRequested();
            throw Failed($"did not finish within {limit.TotalSeconds:0} seconds and was stopped");
        }
    }

    private Process Start(IEnumerable<string> options)
    {
        try
        {
            return Process.Start(new ProcessStartInfo(program, options)
            {
                UseShellExecute = false,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            })!;
        }
        catch (Win32Exception)
        {
            throw Failed("can't be started");
        }
    }

    private VerbException Failed(string how) =>
        new(ExitCode.NoProgram, $"The browser {program} {how}. {otherwise ?? "Name another one with --browser, or print the HTML page from a browser."}");

    // Children of the browser may still write into its profile for a moment.
    private static void Remove(DirectoryInfo folder)
    {
        for (var tries = 20; tries > 0; tries--)
        {
            try
            {
                folder.Delete(recursive: true);
                return;
            }
            catch (Exception busy) when (busy is IOException or UnauthorizedAccessException)
            {
                Thread.Sleep(50);
            }
        }
    }
}

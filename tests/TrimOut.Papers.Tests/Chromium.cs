using System.Diagnostics;
using System.Text;

namespace TrimOut.Papers.Tests;

/// <summary>A browser without a window, for tests that need one: see <see cref="ChromiumFactAttribute"/>.</summary>
internal static class Chromium
{
    /// <summary>A page printed, as PDF.</summary>
    public static byte[] Print(string html) => With(html, (folder, page) =>
    {
        var pdf = Path.Combine(folder, "page.pdf");
        Run(folder, "--no-pdf-header-footer", $"--print-to-pdf={pdf}", page);
        return File.ReadAllBytes(pdf);
    });

    /// <summary>A page after its scripts have run, as HTML.</summary>
    /// <param name="html">The page.</param>
    /// <param name="seconds">How long its scripts may take; the browser's clock jumps to the next timer.</param>
    public static string Dom(string html, int seconds) => With(html, (folder, page) =>
        Run(folder, $"--virtual-time-budget={seconds}000", "--dump-dom", page));

    private static T With<T>(string html, Func<string, string, T> use)
    {
        var folder = Directory.CreateTempSubdirectory("trimout-pages-");
        try
        {
            var page = Path.Combine(folder.FullName, "page.html");
            File.WriteAllText(page, html);
            return use(folder.FullName, new Uri(page).AbsoluteUri);
        }
        finally
        {
            Directory.Delete(folder.FullName, recursive: true);
        }
    }

    private static string Run(string folder, params IEnumerable<string> options)
    {
        string[] always = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", $"--user-data-dir={Path.Combine(folder, "profile")}"];
        using var browser = Process.Start(new ProcessStartInfo(ChromiumFactAttribute.Browser!, [.. always, .. options])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
        })!;
        browser.BeginErrorReadLine();
        var written = browser.StandardOutput.ReadToEndAsync();
        if (!browser.WaitForExit(TimeSpan.FromMinutes(3)))
        {
            browser.Kill(entireProcessTree: true);
            Assert.Fail("The browser did not finish within three minutes.");
        }
        return written.Result;
    }
}

using System.Text;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Help;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>
/// The signs in docs/using.md are made from the tables that draw them: the test fails when they are stale, and writes them anew when TRIMOUT_WRITE_DOCS is set.
/// </summary>
public class SignsTests
{
    private const string Heading = "## The signs\n";

    [Fact]
    public void TheGuideSaysWhatTheTablesOfSignsSay()
    {
        var path = Path.Combine(Repository.Root, "docs", "using.md");
        var page = File.ReadAllText(path);
        var from = page.IndexOf(Heading, StringComparison.Ordinal);
        var to = page.IndexOf("\n## ", from + Heading.Length, StringComparison.Ordinal);
        var section = Section();
        if (Environment.GetEnvironmentVariable("TRIMOUT_WRITE_DOCS") is not null)
            File.WriteAllText(path, page = page[..from] + section + page[to..]);
        Assert.Contains(section + "\n## ", page, StringComparison.Ordinal);
    }

    [Fact]
    public void TheHelpOfTheJobSheetExplainsEverySignAsTheTerminalHasIt()
    {
        foreach (var glyphs in (Glyphs[])[Glyphs.Drawn, Glyphs.Ascii])
        {
            var shell = new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe, null, glyphs);
            var help = HelpScreen.For(shell);
            Assert.All(JobSheetScreen.At(shell.Context).Signs, sign => Assert.Contains(help.Lines, l => l.Keys == sign.Drawn(glyphs) && l.Help == sign.Means));
        }
    }

    [Fact]
    public void TheEndOfTheHelpIsAPageOfItsOwn()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        shell.Press("?");
        shell.Press("end");
        var last = Assert.IsType<HelpScreen>(shell.Screen).Lines.TakeLast(6).ToList();
        var text = shell.Draw(80, 24).ToText();
        Assert.All(last, line => Assert.Contains(line.Name, text, StringComparison.Ordinal));
        Assert.DoesNotContain("more below", text, StringComparison.Ordinal);
    }

    private static string Section()
    {
        var text = new StringBuilder(Heading + "\nColors carry no meaning alone: a sign or a word stands beside each. `?` explains those of the screen.\n");
        foreach (var screen in KeyTableTests.EveryScreen().Where(s => s.Signs.Count > 0).DistinctBy(s => string.Concat(s.Signs.Select(x => x.Means))))
        {
            text.Append($"\n**{KeysPageTests.Name(screen)}**\n\n| Sign | What it means |\n|---|---|\n");
            foreach (var sign in screen.Signs)
                text.Append($"| {(sign.Drawn(Glyphs.Drawn) is var drawn && drawn.Trim().Length == 0 ? "" : $"`{drawn}`")} | {sign.Means} |\n");
        }
        return text.ToString();
    }
}

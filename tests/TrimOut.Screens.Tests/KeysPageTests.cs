using System.Globalization;
using System.Text;
using Microsoft.Extensions.Time.Testing;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>docs/keys.md is made from the key tables: this test fails when it is stale, and writes it anew when TRIMOUT_WRITE_DOCS is set.</summary>
public class KeysPageTests
{
    [Fact]
    public void TheKeysPageSaysWhatTheTablesSay()
    {
        var path = Path.Combine(Repository.Root, "docs", "keys.md");
        var page = Page();
        if (Environment.GetEnvironmentVariable("TRIMOUT_WRITE_DOCS") is not null)
            File.WriteAllText(path, page);
        Assert.Equal(page, File.ReadAllText(path));
    }

    private static string Page()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        var page = new StringBuilder(
            "# Keys\n\nThis page is made from the key tables of the screens; a test holds it to them. `?` shows the same on every screen.\n\n");
        page.Append(
            "While something is typed: Enter takes it, Tab takes it and goes to the next field, Up and Down walk through the choices that have what was " +
                "typed, Esc leaves it as it was.\n\nWhile what a save caused is shown above the last lines: `f` goes to the field that fixes it; " +
                "`Esc` says that a stop was seen, and goes nowhere; the newest is shown first, with how many older ones stay.\n\n" +
                "A digit goes to another screen. Where a figure was meant, Esc goes back and types it there, and what ends a figure or goes on in one " +
                "(`Enter`, `Space`, `/`, `-`, `x`) does nothing before it is said what was meant.\n");
        page.Append(
            "\n## The commonest tasks\n\nCounted by a test that does each of them. " +
                "What is typed as data is not counted.\n\n| Task | From | Keys | Keystrokes |\n|---|---|---|---|\n");
        foreach (var task in CommonTask.All)
            page.Append(CultureInfo.InvariantCulture,
                $"| {task.Name} | {task.From} | " +
                $"{string.Join(" ", task.Keys.Select(k => k[0] == CommonTask.Data ? $"*{k[1..]}*" : $"`{KeyNames.Shown(k)}`"))} | {task.Strokes} |\n");
        page.Append("\n## The work on one unit\n\nKeys besides what is typed as data, counted by a test that does each task, beside what they were when " +
            "somebody first entered a house from the read-me alone.\n\n| Task | Keys | Were |\n|---|---|---|\n");
        foreach (var task in KeysPerTask.All)
            page.Append(CultureInfo.InvariantCulture, $"| {task.Name} | {task.Keys} | {task.Were} |\n");
        var sheets = SheetsInHand.Do();
        page.Append(CultureInfo.InvariantCulture,
            $"\n## The sheets in hand\n\nFrom blank to every value that a check reads of one kind of covering, one panel, one cable, one hub and one remote, " +
            $"with their sheets in hand: {sheets.Values} values take {sheets.Strokes} keystrokes besides what is typed. Of these {sheets.LeftOut} go past " +
            $"what is left, and {sheets.Asked} are a `=`: somebody looked for what is not on a sheet, or at what stood there already. On the kit `s` begins " +
            $"a sheet; `Enter` takes a value and asks for the next.\n");
        Append(page, "On every screen", CommonKeys.For(shell));
        AppendMeanings(page);
        foreach (var screen in KeyTableTests.EveryScreen().DistinctBy(s => s.GetType()))
            Append(page, Name(screen), screen.Keys);
        return page.ToString();
    }

    internal static string Name(IScreen screen) => screen switch
    {
        Sheets.SheetScreen => "A sheet of details (unit, house, panel, remote, kit part)",
        Walk.WalkScreen => "Walk",
        Help.HelpScreen => "Keys",
        TrimOut.Screens.Papers.PreviewScreen => "A paper that is looked at",
        Figures.FiguresScreen => "Workings",
        WhatIf.WhatIfScreen => "What if",
        Kit.SheetInHandScreen => "Sheet in hand",
        _ => screen.Title,
    };

    /// <summary>One key has one meaning: a test holds all screens to this table.</summary>
    private static void AppendMeanings(StringBuilder page)
    {
        page.Append("\n## One key, one meaning\n\nEvery key that a screen has of its own, and on which screens it works. "
            + "What a key of several names does is one sort of thing, done to what each screen is about.\n\n| Key | Does | Screens |\n|---|---|---|\n");
        foreach (var key in KeyTableTests.EveryKey().OrderBy(k => k.Key.Length > 1 ? 0 : 1).ThenBy(k => k.Key, StringComparer.Ordinal))
        {
            page.Append($"| `{KeyNames.Shown(key.Key)}` | {KeyTableTests.MeaningOf(key.Key, key.Select(k => k.Name))} | ")
                .Append(string.Join("; ", key.GroupBy(k => k.Name).Select(g => key.Select(k => k.Name).Distinct().Count() == 1
                    ? string.Join(", ", g.Select(k => k.Screen)) : $"{g.Key}: {string.Join(", ", g.Select(k => k.Screen))}"))).Append(" |\n");
        }
    }

    private static void Append(StringBuilder page, string title, IEnumerable<IKeyAction> keys)
    {
        page.Append($"\n## {title}\n\n| Key | Action | What it does |\n|---|---|---|\n");
        foreach (var key in keys)
            page.Append($"| {string.Join(", ", key.Strokes.Select(s => $"`{KeyNames.Shown(s)}`"))} | {key.Name} | {key.Help} |\n");
    }
}

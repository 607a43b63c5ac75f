using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Screens.Punch;

namespace TrimOut.Screens.Shell;

/// <summary>What can be copied of a screen: the tag and what is wrong with what is under the cursor, and the list as a table.</summary>
internal static class Copying
{
    private const string Tag = "tag";
    private const string Finding = "finding";
    private const string Table = "table";

    /// <summary>Why nothing can be copied now; null when something can.</summary>
    public static string? NotBecause(IScreen screen, ScreenContext context) =>
        Of(screen, context).Any() ? null : "There is nothing here to copy. Move to a unit or a list first.";

    /// <summary>Asks which of it.</summary>
    public static Entry Choice(IScreen screen, ScreenContext context)
    {
        var ways = Of(screen, context).ToList();
        return new("Copy", ways[0].Word, string.Join("; ", ways.Select(w => $"{w.Word}: {w.What}")), (text, now) =>
            Of(screen, now).FirstOrDefault(w => w.Word.StartsWith(text.Trim(), StringComparison.OrdinalIgnoreCase)) is { Word: not null } way
                ? new Transition(screen, new Ask.Copy(way.What, way.Text()))
                : new Refusal($"Choose: {string.Join(", ", ways.Select(w => w.Word))}."))
        {
            Options = [.. ways.Select(w => new Option(w.Word, w.Word))],
        };
    }

    private static IEnumerable<(string Word, string What, Func<string> Text)> Of(IScreen screen, ScreenContext context)
    {
        var unit = (screen as IAsked)?.UnitAt(context);
        if (unit is not null)
            yield return (Tag, unit.Tag, () => unit.Tag);
        if (screen is PunchScreen punch && punch.Current(context) is { } row)
            yield return (Finding, TextOf(row), () => TextOf(row));
        else if (unit is not null && context.Report.About(unit).FirstOrDefault(f => f.Open) is { } worst)
            yield return (Finding, $"{unit.Tag}: {context.Report.Said(worst)}", () => $"{unit.Tag}: {context.Report.Said(worst)}");
        if (screen is ITable table)
            yield return (Table, $"the list of {screen.Title}", () => Lines(table.Table(context)));

        string TextOf(PunchRow of) => $"{context.House.NameOf(of.Subject)}: {of.Text}";
    }

    /// <summary>A line for each row, cells apart by tabs, as spreadsheets take them.</summary>
    private static string Lines(IEnumerable<IReadOnlyList<string>> rows) => string.Concat(rows.Select(r => string.Join('\t', r.Select(ShownText.Kept)) + "\n"));
}

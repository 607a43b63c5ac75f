using System.Globalization;
using System.Text;

namespace TrimOut.Papers.Writing;

/// <summary>What stands at the head and the foot of each printed sheet, as a rule of CSS: paper and house, day, what a mark means, page of pages.</summary>
/// <remarks>CSS Paged Media, margin boxes. Browsers that do not know them leave them out.</remarks>
internal static class RunningLines
{
    private const int MostLetters = 70;

    /// <summary>The rule.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="size">The size of the sheets; null for that of the printer.</param>
    public static string Of(WrittenPaper paper, SheetSize? size) => string.Concat(
        "@page {", (size, paper.Landscape) switch
        {
            (null, false) => "",
            (null, true) => " size: landscape;",
            ({ } sheets, false) => $" size: {sheets.ToString()};",
            ({ } sheets, true) => $" size: {sheets.ToString()} landscape;",
        },
        " @top-left { content: ", Text(paper.Title), "; } @top-right { content: ", Text(paper.Day?.OnPaper() ?? ""), "; }",
        paper.Foot is { } foot ? $" @bottom-left {{ content: {Text(foot)}; }}" : "",
        " @bottom-right { content: counter(page) \" / \" counter(pages); } }");

    /// <summary>
    /// Text for CSS in which nothing that was typed can act: all but letters and digits of ASCII by its number, which a space ends. CSS Syntax 3, 4.3.7.
    /// </summary>
    private static string Text(string typed)
    {
        var shown = new StringInfo(typed);
        var text = new StringBuilder("\"", typed.Length + 2);
        foreach (var rune in (shown.LengthInTextElements > MostLetters ? shown.SubstringByTextElements(0, MostLetters) + "…" : typed).EnumerateRunes())
        {
            if (rune.Value == ' ' || rune.IsAscii && Rune.IsLetterOrDigit(rune))
                text.Append(rune);
            else if (!Rune.IsControl(rune))
                text.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x} ");
        }
        return text.Append('"').ToString();
    }
}

using System.Globalization;

namespace TrimOut.Papers.Writing;

/// <summary>Says on a paper, below its title and whatever template it is written by, that saves of the house are in doubt and not on it.</summary>
internal static class Doubt
{
    /// <summary>The paper, with a word of caution where it lacks something.</summary>
    /// <param name="markdown">The paper.</param>
    /// <param name="data">What it was written from.</param>
    /// <param name="words">The wording that it is written in.</param>
    public static string On(string markdown, PaperData data, Words words)
    {
        if (data.InDoubt is not { } saves)
            return markdown;
        var number = saves.ToString(CultureInfo.InvariantCulture);
        var said = new MarkdownWriter(words, "", []).Say(Inline.Strong("This paper lacks something.") + (saves switch
        {
            0 => Inline.Ours("The end of the house's history is damaged: nobody knows how many saves are missing here."),
            1 => Inline.Ours("The end of the house's history is damaged: at least 1 save is missing here."),
            _ => Inline.Ours($"The end of the house's history is damaged: at least {number} saves are missing here."),
        }) + Inline.Ours("Bring them back before anybody builds by it: trimout rescue.")).ToString();
        var title = markdown.StartsWith("# ", StringComparison.Ordinal) ? markdown.IndexOf('\n', StringComparison.Ordinal) + 1 : 0;
        return title > 0 ? $"{markdown[..title]}\n{said}{markdown[title..]}" : $"{said}\n{markdown}";
    }
}

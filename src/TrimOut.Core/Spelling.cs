namespace TrimOut.Core;

/// <summary>
/// One spelling for all that is shown: the American one, as the words of the trade here are. What is typed, and what older files and scripts say, may have the
/// other one.
/// </summary>
internal static class Spelling
{
    private static readonly (string Other, string Shown)[] Words =
    [
        ("colour", "color"), ("grey", "gray"), ("centre", "center"), ("metre", "meter"), ("licence", "license"), ("levelling", "leveling"),
        ("labelled", "labeled"), ("moulding", "molding"), ("neighbour", "neighbor"), ("socket", "outlet"),
    ];

    /// <summary>A name with the words as they are shown.</summary>
    public static string Shown(string name) => Words.Aggregate(name, (text, word) => text.Replace(word.Other, word.Shown, StringComparison.OrdinalIgnoreCase));
}

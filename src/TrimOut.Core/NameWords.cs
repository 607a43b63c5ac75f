namespace TrimOut.Core;

/// <summary>Finds names by any of their words: <c>blind</c> finds a wood blind.</summary>
public static class NameWords
{
    private static readonly char[] Between = [' ', '-'];

    /// <summary>Whether every word that was typed begins a word of a name, whatever the case and the order; no name has fewer words than were typed.</summary>
    public static bool Begin(string name, string typed) => typed.Split(Between, StringSplitOptions.RemoveEmptyEntries) is { Length: > 0 } words
        && words.Length <= name.Split(Between, StringSplitOptions.RemoveEmptyEntries).Length && words.All(w => BeginsWord(name, w));

    private static bool BeginsWord(string name, string word)
    {
        for (var at = name.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = name.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if (at == 0 || !char.IsLetterOrDigit(name[at - 1]))
                return true;
        }
        return false;
    }
}

namespace TrimOut.Papers.Drawings;

/// <summary>Lettering that goes on in the next line where it is too long for one.</summary>
internal static class Wrapped
{
    /// <summary>The lines of a text in ordinary size. A word that is too long for one stands alone; a figure stays with its fraction and unit.</summary>
    /// <param name="text">The text.</param>
    /// <param name="room">The width of a line.</param>
    public static IEnumerable<string> Lines(string text, double room)
    {
        var line = "";
        foreach (var piece in Pieces(text))
        {
            var longer = line.Length == 0 ? piece : $"{line} {piece}";
            if (line.Length > 0 && Svg.WidthOf(longer) > room)
            {
                yield return line;
                line = piece;
            }
            else
            {
                line = longer;
            }
        }
        yield return line;
    }

    private static List<string> Pieces(string text)
    {
        var pieces = new List<string>();
        foreach (var word in text.Split(' '))
        {
            if (pieces.Count > 0 && BelongTogether(pieces[^1], word))
                pieces[^1] = $"{pieces[^1]} {word}";
            else
                pieces.Add(word);
        }
        return pieces;
    }

    private static bool BelongTogether(string before, string word) => before.Length > 0 && char.IsAsciiDigit(before[^1]) && word.Length > 0
        && (char.IsAsciiDigit(word[0]) || word.TrimEnd(',', ';', '.') is { Length: <= 2 } unit && unit.All(char.IsAsciiLetter));
}

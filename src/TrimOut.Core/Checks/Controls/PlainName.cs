namespace TrimOut.Core.Checks.Controls;

/// <summary>A name without spaces and marks, in small letters: what a hurried eye makes of it.</summary>
internal sealed record PlainName(string Text)
{
    /// <summary>The text, and the text with each letter left out: names that are alike share one of these. Digits stay: they tell names apart.</summary>
    public IEnumerable<string> Sketches => Enumerable.Range(0, Text.Length).Where(at => !char.IsAsciiDigit(Text[at])).Select(at => Text.Remove(at, 1))
        .Append(Text).Distinct();

    /// <summary>The plain form of a name.</summary>
    public static PlainName Of(string name) => new(string.Concat(name.Where(char.IsLetterOrDigit)).ToLowerInvariant());

    /// <summary>
    /// Whether the two are the same or one letter apart. A digit more, less or other tells them apart, and so does the letter behind a number, as in W08A
    /// and W08B.
    /// </summary>
    public bool IsLike(PlainName other)
    {
        var (a, b) = Text.Length >= other.Text.Length ? (Text, other.Text) : (other.Text, Text);
        var head = 0;
        while (head < b.Length && a[head] == b[head])
            head++;
        var tail = 0;
        while (tail < b.Length - head && a[^(tail + 1)] == b[^(tail + 1)])
            tail++;
        var (leftA, leftB) = (a[head..^tail], b[head..^tail]);
        var numbered = head > 0 && char.IsAsciiDigit(a[head - 1]) && tail == 0;
        return leftA.Length <= 1 && leftB.Length <= 1 && !(leftA + leftB).Any(char.IsAsciiDigit) && !(numbered && leftA.Length > 0);
    }
}

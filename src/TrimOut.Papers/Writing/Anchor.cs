using System.Text;

namespace TrimOut.Papers.Writing;

/// <summary>The name that a section is linked to by.</summary>
internal static class Anchor
{
    /// <summary>Lower case, words joined with hyphens: <c>Panel map</c> is <c>panel-map</c>.</summary>
    public static string Of(string title)
    {
        var name = new StringBuilder(title.Length);
        foreach (var letter in title)
        {
            if (char.IsAsciiLetterOrDigit(letter))
                name.Append(char.ToLowerInvariant(letter));
            else if (letter is ' ' or '-')
                name.Append('-');
        }
        return name.ToString();
    }
}

using System.Text;

namespace TrimOut.Papers.Writing;

/// <summary>Names made from headings and tags.</summary>
internal static class Anchor
{
    /// <summary>The name that a heading is linked to by: lower case, words joined with hyphens. <c>Panel map</c> is <c>panel-map</c>.</summary>
    public static string Of(string heading)
    {
        var name = new StringBuilder(heading.Length);
        foreach (var letter in heading)
        {
            if (char.IsLetterOrDigit(letter))
                name.Append(char.ToLowerInvariant(letter));
            else if (letter is ' ' or '-')
                name.Append('-');
        }
        return name.ToString();
    }

    /// <summary>The part of a file's name that tells what it is of: ASCII letters, digits and hyphens only.</summary>
    public static string InFileName(string about) =>
        string.Concat(Of(about).Where(c => char.IsAsciiLetterOrDigit(c) || c == '-').Take(24)) is { Length: > 0 } name ? name : "x";
}

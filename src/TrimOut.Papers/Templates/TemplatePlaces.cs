using System.Text.RegularExpressions;

namespace TrimOut.Papers.Templates;

/// <summary>Finds the named places of a template.</summary>
internal static partial class TemplatePlaces
{
    /// <summary>The first place that is not among the known ones, with its line; null when all are known.</summary>
    public static (string Name, int Line)? Unknown(string template, IReadOnlyCollection<string> known)
    {
        foreach (Match place in Place().Matches(template))
        {
            var name = place.Groups["name"].Value;
            if (name is not ("else" or "if" or "unless" or "this") && !known.Contains(name))
                return (name, 1 + template.AsSpan(0, place.Index).Count('\n'));
        }
        return null;
    }

    [GeneratedRegex(@"\{\{\{?\s*(?:[#^]?\s*(?:if|unless)\s+)?[/#^]?\s*(?<name>[^\s{}!~][^\s{}~]*)")]
    private static partial Regex Place();
}

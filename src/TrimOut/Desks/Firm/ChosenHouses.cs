using System.Security.Cryptography;
using System.Text;

namespace TrimOut.Desks.Firm;

/// <summary>How the houses of a paper were chosen, so that a paper over others of the same day does not take its place.</summary>
/// <param name="InName">What the name of its file says of that: empty where all houses are on it.</param>
/// <param name="Places">The folders and files that were named for it, as one word; empty for the user's own folders.</param>
internal sealed record ChosenHouses(string InName, string Places)
{
    private const int Longest = 40;
    private const int Digits = 12;

    /// <summary>All houses of the user's own folders that have what was looked for.</summary>
    /// <param name="filter">The list and the words that chose them; empty where nothing did.</param>
    public static ChosenHouses By(string filter)
    {
        var words = string.Join(' ', filter.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (words.Length == 0)
            return new("", "");
        var named = new string([.. words.Take(Longest).Select(c => char.IsLetterOrDigit(c) ? c : '-')]).Trim('-');
        // What the name does not say whole is told from what would be written the same.
        var whole = words.Length <= Longest && words.All(c => c == ' ' || char.IsLetterOrDigit(c));
        return new(whole ? $"-{named}" : $"-{named}-{Sum(words)[..6]}", "");
    }

    /// <summary>All houses of folders and files that were named; none is the user's own folder.</summary>
    public static ChosenHouses In(IReadOnlyCollection<string> places) =>
        new("", places.Count == 0 ? "" : $"over {Sum(string.Join('\n', places.Select(Path.GetFullPath).Distinct().Order(StringComparer.Ordinal)))}");

    private static string Sum(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..Digits];
}

namespace TrimOut.Core.Decisions;

/// <summary>
/// A name that differs from one that is there only as a slip of the pen does: "Kichen" is near "Kitchen". Names that were meant to differ are not: "Bath 1" and
/// "Bath 2", "Closet N" and "Closet S".
/// </summary>
public static class NearNames
{
    /// <summary>Letters from which on a word can have a slip: shorter ones tell things apart.</summary>
    private const int ShortestWord = 3;

    /// <summary>Letters from which on a word can have two slips.</summary>
    private const int LongWord = 8;

    /// <summary>The name that is nearly the one that was typed; null where there is none, or the very same is there.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="names">The names that are there.</param>
    public static string? Of(string typed, IEnumerable<string> names)
    {
        var all = names.ToList();
        return all.Contains(typed.Trim(), SameName.Comparer) ? null : all.FirstOrDefault(name => IsNear(typed, name));
    }

    private static bool IsNear(string typed, string name)
    {
        var (one, other) = (Words(typed), Words(name));
        if (one.Length != other.Length)
            return string.Concat(one) is { Length: >= ShortestWord } joined && joined == string.Concat(other);
        var differ = one.Zip(other).Where(w => w.First != w.Second).ToList();
        return differ.Count == 1 && differ[0] is var (typedWord, word) && Math.Min(typedWord.Length, word.Length) >= ShortestWord
            && !typedWord.Concat(word).Any(char.IsDigit)
            && Slips(typedWord, word) <= (Math.Min(typedWord.Length, word.Length) >= LongWord ? 2 : 1);
    }

    private static string[] Words(string name) => name.ToLowerInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    /// <summary>
    /// How many letters were left out, added, changed, or changed over with the one beside: the optimal string alignment distance (G. Navarro, A guided tour to
    /// approximate string matching, ACM Computing Surveys 33(1), 2001).
    /// </summary>
    private static int Slips(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                d[i, j] = i == 0 ? j : j == 0 ? i
                    : Math.Min(Math.Min(d[i - 1, j], d[i, j - 1]) + 1, d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }
        return d[a.Length, b.Length];
    }
}

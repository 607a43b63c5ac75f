using TrimOut.Core;
using TrimOut.Core.Facts;

namespace TrimOut.Screens.Shell;

/// <summary>Choosing from a list as one types: the arrow keys walk through what has the words so far.</summary>
internal static class Choosing
{
    private const int MostNamed = 12;

    /// <summary>The choices of which a word begins with each word that was typed; where none does, those that have it anywhere.</summary>
    public static IReadOnlyList<Option> Fitting(IReadOnlyList<Option> options, string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
            return options;
        List<Option> begin = [.. options.Where(o => NameWords.Begin(o.Shown, typed))];
        return begin.Count > 0 ? begin : [.. options.Where(o => words.All(w => o.Shown.Contains(w, StringComparison.OrdinalIgnoreCase)))];
    }

    /// <summary>The choice after the one that stands there, or before it, of those that fit; of all, where none does.</summary>
    public static string Next(Typing typing, int by)
    {
        var fit = Fitting(typing.Entry.Options, typing.Sought);
        var options = fit.Count > 0 ? fit : typing.Entry.Options;
        var at = options.ToList().FindIndex(o => string.Equals(o.Shown, typing.Text, StringComparison.OrdinalIgnoreCase));
        // One that was typed in full is walked on from, among all.
        if (at >= 0 && options.Count == 1)
        {
            options = typing.Entry.Options;
            at = options.ToList().FindIndex(o => string.Equals(o.Shown, typing.Text, StringComparison.OrdinalIgnoreCase));
        }
        var to = at < 0 ? (by > 0 ? 0 : options.Count - 1) : (at + by + options.Count) % options.Count;
        return options[to].Shown;
    }

    /// <summary>The choices that are left, in a line.</summary>
    public static string InWords(IReadOnlyList<Option> fit) =>
        $"{string.Join(", ", fit.Take(MostNamed).Select(o => o.Shown))}{(fit.Count > MostNamed ? ", ..." : "")}"
            + $"{(fit.Count > 1 ? ": Up and Down choose" : ": Down takes it")}";
}

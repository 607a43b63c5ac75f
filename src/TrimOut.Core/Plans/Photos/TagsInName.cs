using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Plans.Photos;

/// <summary>Finds the tags of a house in the names of files.</summary>
/// <remarks>
/// A tag is a word of its own there, in any case and with or without signs inside: W-03 is W03, W03rough is not. What a tag was called before counts as long
/// as no other window is called so now. A tag without a letter counts only where somebody types it: cameras number their pictures.
/// </remarks>
internal sealed partial class TagsInName
{
    private readonly Dictionary<string, TagMeaning> _words = new(StringComparer.Ordinal);
    private readonly int _longest;
    private readonly HashSet<string> _beginnings = new(StringComparer.Ordinal);
    private readonly int _mostDigits;

    public TagsInName(House house)
    {
        foreach (var window in house.Windows)
        {
            Each(window.Tag, m => m.Add(Whole(window)));
            foreach (var unit in window.Units.Where(u => u.Tag != window.Tag))
                Each(unit.Tag, m => m.Add(unit));
            for (var head = window.Item.Latest(WindowFacts.Tag)?.Before; head is not null; head = head.Before)
            {
                if (head.Value is not string before || SameName.Comparer.Equals(before, window.Tag))
                    continue;
                Each(before, m => m.AddBefore(Whole(window), before));
                foreach (var unit in window.Units.Where(u => u.Tag != window.Tag && u.Tag.StartsWith(window.Tag, StringComparison.Ordinal)))
                    Each(before + unit.Tag[window.Tag.Length..], m => m.AddBefore(unit, before + unit.Tag[window.Tag.Length..]));
            }
        }
        foreach (var parts in _words.Keys.Select(k => LettersThenDigits().Match(k)).Where(m => m.Success))
        {
            _beginnings.Add(parts.Groups[1].Value);
            _mostDigits = Math.Max(_mostDigits, parts.Groups[2].Length);
        }
        _longest = _words.Keys.Select(k => k.Count(c => c == ' ') + 1).DefaultIfEmpty(0).Max();
    }

    /// <summary>
    /// What the words of a name are about, each subject once, the words that are no tag, and which tag of several it may be; null where none is unclear.
    /// </summary>
    /// <param name="name">The name of a file, without its ending, or what somebody typed.</param>
    /// <param name="typed">Whether somebody typed it.</param>
    public (IReadOnlyList<(Subject Of, string? Before)> Found, IReadOnlyList<string> Others, string? Unclear) In(string name, bool typed = false)
    {
        var (words, found, others) = (Words(name), new List<(Subject Of, string? Before)>(), new List<string>());
        string? unclear = null;
        for (var at = 0; at < words.Length;)
        {
            var many = Math.Min(_longest, words.Length - at);
            while (many > 0 && !IsTag(string.Join(' ', words, at, many)))
                many--;
            if (many == 0)
            {
                others.Add(words[at++]);
                continue;
            }
            var (of, before, why) = _words[string.Join(' ', words, at, many)].Today;
            at += many;
            if (of is null)
                unclear ??= why;
            else if (found.All(f => f.Of.Id != of.Id))
                found.Add((of, before));
        }
        // Whoever writes the tag of a unit may write that of its window too.
        found.RemoveAll(f => f.Of is Window && found.Any(u => u.Of is Unit unit && unit.Window.Id == f.Of.Id));
        return (found, others, unclear);

        bool IsTag(string key) => _words.ContainsKey(key) && (typed || key.Any(char.IsLetter));
    }

    /// <summary>
    /// A word of a name that is written as the tags of the house are, and is none of them: W99 where there are W01 and W02. Null where there is none.
    /// </summary>
    /// <param name="words">The words that are no tag, in capitals.</param>
    public string? AlmostTag(IReadOnlyList<string> words)
    {
        // Cameras number their pictures by many figures: no house has so many windows more than it has.
        bool Is(string word) => LettersThenDigits().Match(word) is { Success: true } parts && _beginnings.Contains(parts.Groups[1].Value)
            && parts.Groups[2].Length <= _mostDigits + 1;
        return words.FirstOrDefault(Is) ?? words.Zip(words.Skip(1), (one, next) => one + next).FirstOrDefault(both => Is(both));
    }

    /// <summary>What has a tag, as a label says it; null where nothing has.</summary>
    public (Subject? Of, string? Before, string Unclear)? Tagged(string tag) =>
        _words.TryGetValue(string.Join(' ', Words(tag)), out var found) ? found.AtAnyTime : null;

    private static Subject Whole(Window window) => window.Units is [var only] ? only : window;

    private void Each(string tag, Action<TagMeaning> add)
    {
        var words = Words(tag);
        add(Of(string.Join(' ', words)));
        if (words is [var one] && LettersThenDigits().Match(one) is { Success: true } parts)
            add(Of($"{parts.Groups[1].Value} {parts.Groups[2].Value}"));

        TagMeaning Of(string key) => _words.TryGetValue(key, out var there) ? there : _words[key] = new TagMeaning();
    }

    private static string[] Words(string text) => [.. NoWord().Split(BeforeLetter().Replace(text.ToUpperInvariant(), "")).Where(w => w.Length > 0)];

    [GeneratedRegex(@"[^\p{L}\p{Nd}]+")]
    private static partial Regex NoWord();

    /// <summary>The sign between a window's tag and the letter of its unit: W02-A.</summary>
    [GeneratedRegex(@"(?<=\p{Nd})-(?=\p{L}(?![\p{L}\p{Nd}]))")]
    private static partial Regex BeforeLetter();

    [GeneratedRegex(@"^(\p{L}+)(\p{Nd}+\p{L}?)$")]
    private static partial Regex LettersThenDigits();
}

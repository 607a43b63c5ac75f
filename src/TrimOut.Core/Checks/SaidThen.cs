using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks;

/// <summary>A sentence of a finding, held against one that a waiver of an earlier release keeps in the English words of its day.</summary>
/// <param name="message">The sentence as it is now.</param>
internal sealed partial class SaidThen(Sentence message)
{
    /// <summary>Whether a sentence has the words of this one, whatever its figures and names.</summary>
    public bool HasItsWords(string said) => Match(said, _ => ".*").Success;

    /// <summary>Whether a sentence says the same in either units: the names in it may be former names of what is named now, and never another's.</summary>
    /// <remarks>Where the words are others than in its day, the figures must stand in it in their order, and all that was typed.</remarks>
    public bool IsIn(string said, House house) => Enum.GetValues<DisplayUnits>()
        .SelectMany(u => Enum.GetValues<LengthsAs>().Select(lengths => new Reader(house) { Units = u, Lengths = lengths }))
        .Any(now => HasItsWordsAndFigures(said, now) || (!message.IsTagged && HasItsFigures(said, now)));

    private bool HasItsWordsAndFigures(string said, Reader now)
    {
        // Most sentences are those of their day, and nothing has to be asked of other items then.
        if (said == message.For(now))
            return true;
        var match = Match(said, a => NamedIn(a) is not null ? "(.+)" : Regex.Escape(a.For(now)));
        return match.Success && match.Groups.Values.Skip(1).Select(g => g.Value).Distinct().All(then => !IsAnothers(then, now));
    }

    private bool HasItsFigures(string said, Reader now)
    {
        if (FiguresOf(message.For(now)) is not { Length: > 0 } figures || figures != FiguresOf(said))
            return false;
        var rest = Names(now).OrderByDescending(n => n.Length).Aggregate(said, (left, name) => left.Replace(name, "\n", StringComparison.Ordinal));
        return Leaves().Where(IsTyped).All(a => said.Contains(a.For(now), StringComparison.Ordinal))
            && !Others(now.House).Any(other => Regex.IsMatch(rest, $@"(?<!\w){Regex.Escape(other)}(?!\w)"));
    }

    /// <summary>Whether a name, or one of several, is what another item of the same kind is called.</summary>
    private bool IsAnothers(string then, Reader now) =>
        !Names(now).Contains(then) && (Others(now.House) is var others && (others.Contains(then) || then.Split(", ").Any(others.Contains)));

    private IEnumerable<string> Named => Leaves().Select(NamedIn).OfType<string>();

    /// <summary>The id of the item that is named, by itself or as the value of a fact that points at it; null where none is.</summary>
    private static string? NamedIn(Arg arg) => arg switch { NameArg name => name.Item, ValueArg { Content: ItemRef to } => to.Id, _ => null };

    private List<string> Names(Reader now) => [.. Named.Select(n => now.House.Find(n)).OfType<Item>().Select(now.NameOf)];

    /// <summary>What items are called that are of a kind with those named here, in the house or removed.</summary>
    private HashSet<string> Others(House house)
    {
        var ours = Named.ToHashSet(StringComparer.Ordinal);
        var kinds = ours.Select(house.Find).OfType<Item>().Select(i => i.Kind).ToHashSet();
        var names = ours.Select(house.Find).OfType<Item>().Select(house.NameOf).ToHashSet(StringComparer.Ordinal);
        return [.. house.Items.Values.Where(i => kinds.Contains(i.Kind) && !ours.Contains(i.Id)).Select(house.NameOf).Where(n => !names.Contains(n))];
    }

    private static bool IsTyped(Arg arg) =>
        arg is TypedArg || (arg is ValueArg { Fact: var fact, Content: var content } && (fact.IsChoice || content is string));

    private List<Arg> Leaves()
    {
        var leaves = new List<Arg>();
        _ = Marked(message, leaves);
        return leaves;
    }

    private Match Match(string said, Func<Arg, string> pattern)
    {
        var leaves = new List<Arg>();
        var escaped = Regex.Escape(Marked(message, leaves));
        return Regex.Match(said, $@"\A{Mark().Replace(escaped, m => pattern(leaves[int.Parse(m.ValueSpan[1..^1], CultureInfo.InvariantCulture)]))}\z",
            RegexOptions.Singleline | RegexOptions.NonBacktracking);
    }

    /// <summary>The English words with a mark for every figure and name, which are noted in their order.</summary>
    private static string Marked(Sentence sentence, List<Arg> leaves) =>
        sentence.Message.In(english => english, [.. sentence.Args.Select(a => Marked(a, leaves))]);

    private static string Marked(Arg arg, List<Arg> leaves)
    {
        switch (arg)
        {
            case SentenceArg part:
                return Marked(part.Sentence, leaves);
            case ListArg list:
                return string.Join(list.Between, list.Args.Select(a => Marked(a, leaves)));
            case StandsForArg shown:
                return Marked(shown.Shown, leaves);
            default:
                leaves.Add(arg);
                return string.Create(CultureInfo.InvariantCulture, $"\u0001{leaves.Count - 1}\u0002");
        }
    }

    private static string FiguresOf(string words) => string.Join(' ', Figure().Matches(words).Select(m => m.Value));

    [GeneratedRegex("\u0001[0-9]+\u0002")]
    private static partial Regex Mark();

    [GeneratedRegex(@"\d+(?:[./]\d+)*")]
    private static partial Regex Figure();
}

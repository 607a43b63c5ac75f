using System.Security.Cryptography;
using System.Text;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Wording;

/// <summary>What is to be said, as data: a message and its typed arguments. It becomes words only for a reader.</summary>
public sealed class Sentence : IEquatable<Sentence>
{
    private const int LongestFigures = 3000;

    private readonly Arg[] _args;
    private readonly ListArg? _standsFor;

    internal Sentence(Message message, Arg[] args, ListArg? standsFor = null) => (Message, _args, _standsFor) = (message, args, standsFor);

    /// <summary>The message.</summary>
    public Message Message { get; }

    /// <summary>What stands in its places.</summary>
    public IReadOnlyList<Arg> Args => _args;

    /// <summary>
    /// The tag of its message, its arguments and all that it stands for in their stored form, the same in every language, wording, unit setting and order
    /// of the walk. Of very many of them their SHA-256 stands for them.
    /// </summary>
    public string Figures => FiguresAs(StoredAs.Now) is var figures && figures.Length <= LongestFigures ? $"[{figures}]"
        : $"[#{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(figures)))}]";

    /// <summary>Whether figures were stored as they are now.</summary>
    internal static bool AreAsNow(string figures) => figures.StartsWith('[');

    /// <summary>Whether something typed in it has signs that earlier releases could take for what parts two figures.</summary>
    internal bool HasPartingSigns => _args.Any(a => a.Figure != a.FigureAs(StoredAs.Members));

    /// <summary>The figures as a release stored them, without brackets around them.</summary>
    internal string FiguresAs(StoredAs form)
    {
        var figures = _args.Select(a => a.FigureAs(form)).Prepend(form == StoredAs.Untagged ? "" : Message.Tag);
        if (form == StoredAs.Now && _standsFor is not null)
            figures = figures.Append($"({_standsFor.Figure})");
        return string.Join("; ", figures.Where(f => f.Length > 0));
    }

    /// <summary>The same words, which stand for all of these too: other ones of them are another figure, though none of them is read.</summary>
    public Sentence StandingFor(IEnumerable<Arg> all) => Arg.All(all) is ListArg { Args.Length: > 0 } list ? new(Message, _args, list) : this;

    /// <summary>Whether its message, or that of a part of it, has a tag.</summary>
    internal bool IsTagged => Message.Tag.Length > 0 || _args.Any(Arg.IsTagged);

    /// <summary>The words for a reader.</summary>
    public string For(Reader reader)
    {
        var filled = Array.ConvertAll(_args, a => a.For(reader));
        // Two lengths that differ by less than a mark of the tape are told exactly: else a sentence would say that they are alike.
        for (var at = 0; at < filled.Length && reader.Lengths == LengthsAs.OnTape; at++)
        {
            if (Shown(_args[at]) is LengthArg { OnTape: true } mine && _args.Select(Shown).OfType<LengthArg>().Any(o => o.LooksLike(mine, reader)))
                filled[at] = mine.For(reader with { Lengths = LengthsAs.Exact });
        }
        return Message.In(reader.Words, filled);
    }

    private static Arg Shown(Arg arg) => arg is StandsForArg { Shown: var shown } ? shown : arg;

    /// <summary>The English words, in the units of a house.</summary>
    public string In(House house) => For(new Reader(house));

    /// <inheritdoc/>
    public bool Equals(Sentence? other) => other is not null && Message.English == other.Message.English && _args.AsSpan().SequenceEqual(other._args)
        && Equals(_standsFor, other._standsFor);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Sentence);

    /// <inheritdoc/>
    public override int GetHashCode() => Message.English.GetHashCode(StringComparison.Ordinal);

    /// <summary>The message and its figures, for whoever debugs.</summary>
    public override string ToString() => $"{Message.English} ({Figures})";
}

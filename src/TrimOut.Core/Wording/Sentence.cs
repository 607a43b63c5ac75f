using TrimOut.Core.Houses;

namespace TrimOut.Core.Wording;

/// <summary>What is to be said, as data: a message and its typed arguments. It becomes words only for a reader.</summary>
public sealed class Sentence : IEquatable<Sentence>
{
    private readonly Arg[] _args;

    internal Sentence(Message message, Arg[] args) => (Message, _args) = (message, args);

    /// <summary>The message.</summary>
    public Message Message { get; }

    /// <summary>What stands in its places.</summary>
    public IReadOnlyList<Arg> Args => _args;

    /// <summary>The tag of its message and its arguments in their stored form, the same in every language, wording and unit setting.</summary>
    public string Figures => string.Join("; ", _args.Select(a => a.Figure).Prepend(Message.Tag).Where(f => f.Length > 0));

    /// <summary>The same as releases stored it in which messages had no tags and lists stood in walking order.</summary>
    internal string FormerFigures => string.Join("; ", _args.Select(a => a.FormerFigure).Where(f => f.Length > 0));

    /// <summary>Whether its message, or that of a part of it, has a tag.</summary>
    internal bool IsTagged => Message.Tag.Length > 0 || _args.Any(Arg.IsTagged);

    /// <summary>The words for a reader.</summary>
    public string For(Reader reader)
    {
        var filled = Array.ConvertAll(_args, a => a.For(reader));
        // Two lengths that differ by less than a mark of the tape are told exactly: else a sentence would say that they are alike.
        for (var at = 0; at < filled.Length && reader.Lengths == LengthsAs.OnTape; at++)
        {
            if (_args[at] is LengthArg { OnTape: true } mine && _args.OfType<LengthArg>().Any(o => o.LooksLike(mine, reader)))
                filled[at] = mine.For(reader with { Lengths = LengthsAs.Exact });
        }
        return Message.In(reader.Words, filled);
    }

    /// <summary>The English words, in the units of a house.</summary>
    public string In(House house) => For(new Reader(house));

    /// <inheritdoc/>
    public bool Equals(Sentence? other) => other is not null && Message.English == other.Message.English && _args.AsSpan().SequenceEqual(other._args);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Sentence);

    /// <inheritdoc/>
    public override int GetHashCode() => Message.English.GetHashCode(StringComparison.Ordinal);

    /// <summary>The message and its figures, for whoever debugs.</summary>
    public override string ToString() => $"{Message.English} ({Figures})";
}

using System.Collections.Concurrent;
using System.Collections.Frozen;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Papers.Writing;

/// <summary>The wording of papers: our own phrases in English, or what a template puts in their place. Typed text never goes through here.</summary>
/// <remarks>A phrase may have places for typed text, written {0}, {1}.</remarks>
internal sealed class Words
{
    private readonly Func<string, string>? _of;
    private readonly ConcurrentDictionary<(string Fact, string English), string> _choices = new();

    /// <summary>A wording.</summary>
    /// <param name="of">The wording of an English phrase; null for the phrase itself.</param>
    /// <param name="language">The language, as in the lang attribute of HTML.</param>
    /// <param name="decimalComma">Whether decimals are parted by a comma.</param>
    public Words(Func<string, string>? of, string language, bool decimalComma = false)
    {
        _of = of;
        Language = language;
        DecimalComma = decimalComma;
    }

    /// <summary>The wording as it is in the program.</summary>
    public static Words English { get; } = new(null, "en");

    /// <summary>The language of the wording.</summary>
    public string Language { get; }

    /// <summary>Whether decimals are parted by a comma.</summary>
    public bool DecimalComma { get; }

    /// <summary>The wording in which each phrase that is a key is replaced.</summary>
    public static Words With(IReadOnlyDictionary<string, string> instead, string language, bool decimalComma = false)
    {
        var frozen = instead.ToFrozenDictionary(StringComparer.Ordinal);
        return new Words(phrase => frozen.GetValueOrDefault(phrase, phrase), language, decimalComma);
    }

    /// <summary>Who reads sentences about a house in this wording.</summary>
    public Reader ReaderOf(House house) => new(house) { Words = Of, DecimalComma = DecimalComma };

    /// <summary>The wording of one phrase.</summary>
    public string Of(string english) => _of is null ? english : _of(english);

    /// <summary>The wording of one choice of a fact: with the fact's name before it where the wording has that, else alone.</summary>
    public string OfChoice(string fact, string english) => _of is null ? english : _choices.GetOrAdd((fact, english), c =>
    {
        var withFact = $"{c.Fact}: {c.English}";
        return _of(withFact) is var named && named != withFact ? named : _of(c.English);
    });
}

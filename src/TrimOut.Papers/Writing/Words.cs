using System.Collections.Frozen;

namespace TrimOut.Papers.Writing;

/// <summary>The wording of papers: our own phrases in English, or what a template puts in their place. Typed text never goes through here.</summary>
/// <remarks>A phrase may have places for typed text, written {0}, {1}.</remarks>
internal sealed class Words
{
    private readonly Func<string, string> _of;

    /// <summary>A wording.</summary>
    /// <param name="of">The wording of an English phrase.</param>
    /// <param name="language">The language, as in the lang attribute of HTML.</param>
    public Words(Func<string, string> of, string language)
    {
        _of = of;
        Language = language;
    }

    /// <summary>The wording as it is in the program.</summary>
    public static Words English { get; } = new(phrase => phrase, "en");

    /// <summary>The language of the wording.</summary>
    public string Language { get; }

    /// <summary>The wording in which each phrase that is a key is replaced.</summary>
    public static Words With(IReadOnlyDictionary<string, string> instead, string language)
    {
        var frozen = instead.ToFrozenDictionary(StringComparer.Ordinal);
        return new Words(phrase => frozen.GetValueOrDefault(phrase, phrase), language);
    }

    /// <summary>The wording of one phrase.</summary>
    public string Of(string english) => _of(english);
}

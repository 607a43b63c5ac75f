using System.Collections.Frozen;

namespace TrimOut.Papers.Writing;

/// <summary>The wording of papers: our own phrases in English, or what a template puts in their place. Typed text never goes through here.</summary>
/// <remarks>A phrase may have places for typed text, written {0}, {1}.</remarks>
internal sealed class Words
{
    private readonly FrozenDictionary<string, string> _instead;

    /// <summary>The wording in which each phrase that is a key is replaced.</summary>
    public Words(IEnumerable<KeyValuePair<string, string>> instead, string language)
    {
        _instead = instead.ToFrozenDictionary(StringComparer.Ordinal);
        Language = language;
    }

    /// <summary>The wording as it is in the program.</summary>
    public static Words English { get; } = new([], "en");

    /// <summary>The language of the wording, as in the lang attribute of HTML.</summary>
    public string Language { get; }

    /// <summary>The phrases that were replaced.</summary>
    public IEnumerable<string> Phrases => _instead.Keys;

    /// <summary>The wording of one phrase.</summary>
    public string Of(string english) => _instead.GetValueOrDefault(english, english);
}

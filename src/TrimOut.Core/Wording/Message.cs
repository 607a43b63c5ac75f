using System.Globalization;
using System.Text.RegularExpressions;

namespace TrimOut.Core.Wording;

/// <summary>
/// A sentence, or a part of one, with places for figures and names, written {0}, {1}. Other languages hold their words under the English ones.
/// </summary>
/// <remarks>A message is declared once, as a static field, so that a test can find all there are and hold each language to them.</remarks>
public sealed partial class Message
{
    /// <summary>A message.</summary>
    /// <param name="english">Its English words, with every place from {0} on.</param>
    /// <param name="tag">
    /// What tells it from another message of its check that can have the same figures: stored with waivers, kebab-case, never changed. Empty where the
    /// figures tell them apart.
    /// </param>
    public Message(string english, string tag = "")
    {
        (English, Tag) = (english, tag);
        Places = Place().Matches(english).Select(m => int.Parse(m.ValueSpan[1..^1], CultureInfo.InvariantCulture)).DefaultIfEmpty(-1).Max() + 1;
    }

    /// <summary>Its English words.</summary>
    public string English { get; }

    /// <summary>What tells it from another message of its check that can have the same figures; empty where they tell.</summary>
    public string Tag { get; }

    /// <summary>How many places it has.</summary>
    public int Places { get; }

    /// <summary>The message with its places filled.</summary>
    /// <exception cref="ArgumentException">There are more or fewer arguments than places.</exception>
    public Sentence With(params Arg[] args) => args.Length == Places
        ? new Sentence(this, args)
        : throw new ArgumentException($"\"{English}\" has {Places} places and was given {args.Length}.", nameof(args));

    /// <summary>A message that has no places.</summary>
    public static implicit operator Sentence(Message message) => message.With();

    /// <summary>Its words in a language with its places filled. Braces that are no place stand as they are, wherever they come from.</summary>
    internal string In(Func<string, string> words, params string[] filled) => Places == 0
        ? words(English)
        : Place().Replace(words(English), m => m.ValueSpan[1] - '0' is var at && at < filled.Length ? filled[at] : m.Value);

    [GeneratedRegex(@"\{[0-9]\}")]
    private static partial Regex Place();
}

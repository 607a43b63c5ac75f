using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Papers.Writing;

/// <summary>
/// What stands inside one line of a paper. A string turns into it as typed text: escaped, never translated, so that nothing typed can act as markup.
/// </summary>
internal sealed class Inline
{
    // Most of a paper is typed text, which is the same in every wording: it is kept as it is, and escaped once.
    private readonly string? _text;
    private readonly Func<Words, string>? _plain;
    private readonly Func<Words, string>? _markdown;

    private Inline(string text) => _text = text;

    private Inline(Func<Words, string> plain, Func<Words, string>? markdown = null)
    {
        _plain = plain;
        _markdown = markdown;
    }

    /// <summary>What a blank to write in by hand looks like in Markdown.</summary>
    public const string BlankMark = "______";

    /// <summary>A blank to write in by hand.</summary>
    public static Inline Blank { get; } = new(_ => BlankMark, _ => BlankMark);

    /// <summary>A box to tick by hand.</summary>
    public static Inline Box { get; } = new("☐");

    /// <summary>What stands for "nothing was noted": no hyphen, which at the start of a line would begin a list.</summary>
    public static Inline Dash { get; } = new("–");

    /// <summary>What stands for "it is still to come".</summary>
    public static Inline NotYet { get; } = Ours("not yet");

    /// <summary>The text as a reader sees it.</summary>
    public string Plain(Words words) => _text ?? _plain!(words);

    /// <summary>The text as Markdown.</summary>
    public string Markdown(Words words) => _markdown is null ? Escaping.Escape(Plain(words)) : _markdown(words);

    /// <summary>Our own words.</summary>
    public static Inline Ours(string english) => new(w => w.Of(english));

    /// <summary>Our own words with typed text in them.</summary>
    public static Inline Ours(Phrase phrase) => new(phrase.In);

    /// <summary>
    /// One of the choices of a fact, in our own words. Where one English word means two things a wording may name the fact: <c>Polarity: right</c>.
    /// </summary>
    public static Inline Choice(string fact, string english) => new(w => w.OfChoice(fact, english));

    /// <summary>What an item is called: as typed, or in our own words where nothing was.</summary>
    public static Inline NameOf(House house, Item item) => new(w => house.NameOf(item, w.Of));

    /// <summary>A sentence about a house: our own words with its figures, and what was typed as it was typed.</summary>
    public static Inline Said(Sentence sentence, House house) => new(w => sentence.For(w.ReaderOf(house)));

    /// <summary>What something is called, in the words of the paper.</summary>
    public static Inline Said(Arg name, House house) => new(w => name.For(w.ReaderOf(house)));

    /// <summary>A figure that was printed with a point, its unit behind a space: in the number style of the wording and with its word for the unit.</summary>
    public static Inline Figure(string printed)
    {
        var space = printed.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && space + 1 < printed.Length && char.IsLetter(printed[space + 1])
            ? new(w => $"{Number(printed[..space], w)} {w.Of(printed[(space + 1)..])}")
            : printed.Contains('.', StringComparison.Ordinal) ? new Inline(w => Number(printed, w)) : printed;
    }

    private static string Number(string printed, Words words) => words.DecimalComma ? printed.Replace('.', ',') : printed;

    /// <summary>A number.</summary>
    public static Inline Number(int number) => new(number.ToString(CultureInfo.InvariantCulture));

    /// <summary>Our own words, made strong. Not for typed text: what stands next to the marks decides whether they work.</summary>
    public static Inline Strong(string english) => new(w => w.Of(english), w => $"**{Escaping.Escape(w.Of(english))}**");

    /// <summary>An entry that stands out, with no mark in it.</summary>
    public static Inline Strong(Inline entry) => new(entry.Plain, w => $"**{entry.Markdown(w)}**");

    /// <summary>A link to a section of the same paper.</summary>
    public static Inline LinkTo(string heading) => new(_ => heading, _ => $"[{Escaping.Escape(heading)}](#{Anchor.Of(heading)})");

    /// <summary>A number that a phone calls, as it was typed.</summary>
    /// <param name="typed">How it stands there.</param>
    /// <param name="dialled">What is dialled: digits, with a plus sign before a country code.</param>
    public static Inline Call(string typed, string dialled) => new(_ => typed, _ => $"[{Escaping.Escape(typed)}]({PhoneNumber.Scheme}{dialled})");

    /// <summary>A picture that stands in a file beside the paper.</summary>
    public static Inline Picture(Inline description, string path) =>
        new(description.Plain, w => $"![{description.Markdown(w)}]({path})");

    /// <summary>All of them, with the same text between each two.</summary>
    public static Inline Join(string between, IReadOnlyCollection<Inline> parts) =>
        parts.All(p => p._text is not null)
            ? new(string.Join(between, parts.Select(p => p._text)))
            : new(w => string.Join(between, parts.Select(p => p.Plain(w))));

    /// <summary>All of them with a space between each two: pictures side by side, however many.</summary>
    public static Inline Beside(IReadOnlyCollection<Inline> parts) =>
        new(w => string.Join(' ', parts.Select(p => p.Plain(w))), w => string.Join(' ', parts.Select(p => p.Markdown(w))));

    /// <summary>A text with a sign right behind it.</summary>
    public static Inline WithBehind(Inline text, string sign) => new(w => text.Plain(w) + sign, w => text.Markdown(w) + sign);

    /// <summary>Both, with a space between them.</summary>
    public static Inline operator +(Inline a, Inline b) => new(w => $"{a.Plain(w)} {b.Plain(w)}", w => $"{a.Markdown(w)} {b.Markdown(w)}");

    /// <summary>Text as typed, without what would act or stand unseen in it, wherever it comes from.</summary>
    public static implicit operator Inline(string text) => new(ShownText.Kept(text));
}

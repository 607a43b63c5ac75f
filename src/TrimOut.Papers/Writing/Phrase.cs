using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace TrimOut.Papers.Writing;

/// <summary>
/// One of our own phrases with places for typed text, taken from an interpolated string so that the wording can be changed around what was typed.
/// </summary>
[InterpolatedStringHandler]
internal readonly struct Phrase(int literalLength, int places)
{
    private readonly StringBuilder _english = new(literalLength + 3 * places);
    private readonly List<Inline> _typed = new(places);

    /// <summary>A piece of our own wording.</summary>
    public void AppendLiteral(string piece) => _english.Append(piece);

    /// <summary>Typed text.</summary>
    public void AppendFormatted(string? typed) => AppendFormatted((Inline)(typed ?? ""));

    /// <summary>A number.</summary>
    public void AppendFormatted(int number) => AppendFormatted(number.ToString(CultureInfo.InvariantCulture));

    /// <summary>Typed text, or another phrase.</summary>
    public void AppendFormatted(Inline text)
    {
        _english.Append('{').Append((char)('0' + _typed.Count)).Append('}');
        _typed.Add(text);
    }

    /// <summary>The phrase in some wording, with what was typed in its places.</summary>
    public string In(Words words)
    {
        var wording = words.Of(_english.ToString());
        var text = new StringBuilder(wording.Length);
        for (var at = 0; at < wording.Length; at++)
        {
            if (at + 2 < wording.Length && wording[at] == '{' && wording[at + 2] == '}' && wording[at + 1] - '0' is >= 0 and var place && place < _typed.Count)
            {
                text.Append(_typed[place].Plain(words));
                at += 2;
            }
            else
            {
                text.Append(wording[at]);
            }
        }
        return text.ToString();
    }
}

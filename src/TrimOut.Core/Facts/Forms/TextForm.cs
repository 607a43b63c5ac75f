using System.Globalization;
using System.Text;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts.Forms;

/// <summary>Free text on one line.</summary>
/// <param name="most">The most characters.</param>
/// <param name="ofSomebody">Whether it says who somebody is: a name has a letter in it, in whatever writing.</param>
internal sealed class TextForm(int most, bool ofSomebody = false) : Form<string>
{
    public override string Hint => "text";

    public override Result<string> Read(string typed, House house)
    {
        var text = Clean(typed);
        return text.Length == 0 ? new Refusal("Nothing was typed.")
            : new StringInfo(text).LengthInTextElements is var length && length > most
            ? new Refusal($"That is too long: {most} characters at the most, and it has {length}.")
            : ofSomebody && !text.EnumerateRunes().Any(Rune.IsLetter) ? new Refusal($"\"{text}\" is no name: type who it was.")
            : text;
    }

    public override string Write(string value) => value;

    public override Result<string> Decode(string stored) => ShownText.Kept(stored);

    public override string Show(string value, House house) => value;

    private static string Clean(string typed) => ComposedText.Of(ShownText.Kept(typed.Trim()).Trim());
}

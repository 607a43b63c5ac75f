using System.Globalization;
using System.Text;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts.Forms;

/// <summary>Free text on one line.</summary>
internal sealed class TextForm(int most) : Form<string>
{
    public override string Hint => "text";

    public override Result<string> Read(string typed, House house)
    {
        var text = Clean(typed);
        return text.Length == 0 ? new Refusal("Nothing was typed.")
            : new StringInfo(text).LengthInTextElements > most ? new Refusal($"That is too long: {most} characters at the most.")
            : text;
    }

    public override string Write(string value) => value;

    public override Result<string> Decode(string stored) => stored;

    public override string Show(string value, House house) => value;

    private static string Clean(string typed)
    {
        var text = new StringBuilder(typed.Length);
        foreach (var rune in typed.Trim().EnumerateRunes())
        {
            if (!Rune.IsControl(rune))
                text.Append(rune);
            else if (text.Length > 0 && text[^1] != ' ')
                text.Append(' ');
        }
        return text.ToString().Normalize(NormalizationForm.FormC);
    }
}

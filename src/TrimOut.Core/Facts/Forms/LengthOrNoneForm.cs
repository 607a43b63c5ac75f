using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts.Forms;

/// <summary>A length, or the word none for a part that has no such thing: not the same as a blank, which nobody looked up yet.</summary>
/// <param name="none">The value that stands for none: no length of the form.</param>
/// <param name="lengths">The lengths.</param>
internal sealed class LengthOrNoneForm(Length none, Form<Length> lengths) : Form<Length>
{
    private const string Word = "none";

    public override string Hint => $"{lengths.Hint}, or {Word}";

    public override string HintIn(DisplayUnits units) => $"{lengths.HintIn(units)}, or {Word}";

    public override Result<Length> Read(string typed, House house) =>
        typed.Trim().Equals(Word, StringComparison.OrdinalIgnoreCase) ? none : lengths.Read(typed, house);

    public override string Write(Length value) => value == none ? Word : lengths.Write(value);

    public override Result<Length> Decode(string stored) => stored == Word ? none : lengths.Decode(stored);

    public override string Show(Length value, House house) => value == none ? Word : lengths.Show(value, house);
}

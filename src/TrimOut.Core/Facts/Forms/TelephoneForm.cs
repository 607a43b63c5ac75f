using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts.Forms;

/// <summary>A telephone number as people write it: digits with spaces, dashes, brackets, a plus in front and an extension.</summary>
internal sealed class TelephoneForm : Form<string>
{
    private const int FewestDigits = 3;
    private const int MostDigits = 20;
    private const string Between = " +-/().x#*,";

    public override string Hint => "+1 555 0100";

    public override Result<string> Read(string typed, House house)
    {
        if (typed.Count(char.IsAsciiDigit) is < FewestDigits or > MostDigits)
            return new Refusal($"\"{typed}\" is no telephone number: it has {FewestDigits} to {MostDigits} digits.");
        return typed.Any(c => !char.IsAsciiDigit(c) && !Between.Contains(c, StringComparison.Ordinal))
            ? new Refusal($"\"{typed}\" can't be dialled. Write the number alone, such as {Hint}; a name goes into its own field.")
            : typed;
    }

    public override string Write(string value) => value;

    public override Result<string> Decode(string stored) => ShownText.Kept(stored);

    public override string Show(string value, House house) => value;
}

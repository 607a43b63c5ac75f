using System.Text.RegularExpressions;
using TrimOut.Core.Electrical;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts.Forms;

/// <summary>A mains voltage as it stands on a plate; figures alone are volts, and are shown with their unit.</summary>
/// <param name="text">The text as it is typed and stored.</param>
internal sealed partial class MainsVoltsForm(Form<string> text) : Form<string>
{
    public override string Hint => "120 V, 100 to 240 V";

    public override Result<string> Read(string typed, House house) => text.Read(typed, house).Then<string>(read => MainsVolts.Highest(read) is null
        ? new Refusal($"\"{ShownText.Line(read)}\" names no volts. Type what stands on the plate, such as {Hint}.")
        : read);

    public override string Write(string value) => text.Write(value);

    public override Result<string> Decode(string stored) => text.Decode(stored);

    public override string Show(string value, House house) => FiguresAlone().IsMatch(value) ? value + " V" : value;

    [GeneratedRegex(@"^\d+(?:\.\d+)?(?:\s*(?:-|–|/|to)\s*\d+(?:\.\d+)?)*$")]
    private static partial Regex FiguresAlone();
}

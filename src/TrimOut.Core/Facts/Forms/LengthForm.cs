using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts.Forms;

/// <summary>A length within bounds: stored in millimetres with the unit written out.</summary>
internal sealed class LengthForm(Length least, Length most, LengthScale scale) : Form<Length>
{
    public override string Hint => scale == LengthScale.Run ? "62 ft, 18.9 m" : "45 1/2, 3'-9 1/2\", 1156 mm";

    public override string HintIn(DisplayUnits units) => units == DisplayUnits.Inches ? Hint
        : scale == LengthScale.Run ? "18.9 m, 62 ft" : "1156, 115.6 cm, 45 1/2 in";

    public override Result<Length> Read(string typed, House house) => LengthText.Read(typed, house.DisplayUnits, scale).Then<Length>(length =>
        length < least
            ? new Refusal($"{length.Show(house.DisplayUnits, scale)} is too short: the least that makes sense here is {least.Show(house.DisplayUnits, scale)}.")
        : length > most
            ? new Refusal($"{length.Show(house.DisplayUnits, scale)} is too long: the most that makes sense here is {most.Show(house.DisplayUnits, scale)}.")
        : length);

    public override string Write(Length value) => NumberText.Plain(value.Millimetres) + " mm";

    public override Result<Length> Decode(string stored) => LengthText.Read(stored, DisplayUnits.Millimetres);

    public override string Show(Length value, House house) => value.Show(house.DisplayUnits, scale);
}

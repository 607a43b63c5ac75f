using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts.Forms;

/// <summary>A length within bounds: stored in millimetres with the unit written out.</summary>
/// <param name="least">The least that can be typed.</param>
/// <param name="most">The most that can be typed.</param>
/// <param name="scale">Whether it is of an opening or of a run.</param>
/// <param name="alsoStored">Whether the bounds hold for what comes with a file too, and what is past them does not count.</param>
/// <param name="noneIsZero">Whether a word that says that there is none is typed for zero too.</param>
internal sealed class LengthForm(Length least, Length most, LengthScale scale, bool alsoStored = false, bool noneIsZero = false) : Form<Length>
{
    public override string Hint => scale == LengthScale.Run ? "62 ft, 18.9 m" : "45 1/2, 3'-9 1/2\", 1156 mm";

    public override string HintIn(DisplayUnits units) => units == DisplayUnits.Inches ? Hint
        : scale == LengthScale.Run ? "18.9 m, 62 ft" : "1156, 115.6 cm, 45 1/2 in";

    public override Result<Length> Read(string typed, House house)
    {
        if (noneIsZero && typed.Any(char.IsLetter) && AbsenceWords.SayNothing(typed))
            return Length.Zero;
        var read = LengthText.Read(typed, house.DisplayUnits, scale);
        if (!read.Ok)
            return read;
        var bounded = Bounded(read.Value, house.DisplayUnits);
        return bounded.Ok ? bounded : new Refusal(bounded.Reason + Meant(typed, read.Value, house.DisplayUnits));
    }

    public override string Write(Length value) => NumberText.Plain(value.Millimetres) + " mm";

    public override Result<Length> Decode(string stored) => LengthText.Read(stored, DisplayUnits.Millimetres)
        .Then(length => alsoStored ? Bounded(length, DisplayUnits.Millimetres) : length);

    public override string Show(Length value, House house) => value.Show(house.DisplayUnits, scale);

    /// <summary>A length that may have been meant, where the unit is another than that of the number; nothing where none fits the bounds.</summary>
    private string Meant(string typed, Length length, DisplayUnits units)
    {
        const int inchesPerFoot = 12;
        const int centimetre = 10;
        const int metre = 1000;
        // A number of millimeters that is too small is one of centimeters, of meters, or of inches; one of inches is one of feet.
        Length[] meant = length < least && (units == DisplayUnits.Millimetres || typed.Contains("mm", StringComparison.OrdinalIgnoreCase))
            ? [length * centimetre, length * metre, Length.FromInches(length.Millimetres)]
            : length < least ? [length * inchesPerFoot, Length.FromInches(length.Millimetres)]
            : typed.Contains('\'', StringComparison.Ordinal) || typed.Contains('f', StringComparison.OrdinalIgnoreCase)
            ? [length / inchesPerFoot]
            : [Length.FromMillimetres(length.Inches), length / inchesPerFoot];
        return Array.Find(meant, m => m >= least && m <= most) is var fits && fits > Length.Zero ? $" Did you mean {Short(fits, units)}?" : "";
    }

    /// <summary>Rounded where exact figures would run on, as of feet in meters.</summary>
    private string Short(Length length, DisplayUnits units)
    {
        const int longest = 12;
        return length.Show(units, scale) is { Length: <= longest } exact ? exact : length.ShowRounded(units, scale);
    }

    private Result<Length> Bounded(Length length, DisplayUnits units) =>
        length < least
            ? new Refusal($"{length.Show(units, scale)} is too short: the least that makes sense here is {least.Show(units, scale)}.")
        : length > most
            ? new Refusal($"{length.Show(units, scale)} is too long: the most that makes sense here is {most.Show(units, scale)}.")
        : length;
}

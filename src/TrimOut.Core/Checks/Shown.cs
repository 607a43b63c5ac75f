using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks;

/// <summary>Prints lengths in the units of the house that a subject is in.</summary>
internal static class Shown
{
    /// <summary>A length of an opening, a tail or a bracket, without loss.</summary>
    public static string In(this Length length, Subject subject) => length.Show(subject.House.DisplayUnits);

    /// <summary>A length of a cable run, without loss.</summary>
    public static string RunIn(this Length length, Subject subject) => length.ShowRun(subject.House.DisplayUnits);

    /// <summary>A length that was worked out and has no exact tape reading: to a thousandth of an inch or a hundredth of a millimeter.</summary>
    public static string About(this Length length, Subject subject) => subject.House.DisplayUnits == DisplayUnits.Inches
        ? NumberText.Show(length.Inches, "in")
        : NumberText.Show(Math.Round(length.Millimetres, 2), "mm");

    /// <summary>The most that a run may be, to a hundredth of a foot or meter, rounded down.</summary>
    public static string LimitIn(this Length length, Subject subject) => subject.House.DisplayUnits == DisplayUnits.Inches
        ? NumberText.Show(length.RoundDown(Length.FromFeet(0.01m)).Feet, "ft")
        : NumberText.Show(length.RoundDown(Length.FromMillimetres(10)).Metres, "m");
}

namespace TrimOut.Core.Units;

/// <summary>The finest mark that a person reads off a tape: 1/16 in, or 1 mm. Common practice, no published source.</summary>
public static class TapeMark
{
    /// <summary>A sixteenth of an inch.</summary>
    public static readonly Length Sixteenth = Length.FromInches(0, 1, 16);

    /// <summary>A millimetre.</summary>
    public static readonly Length Millimetre = Length.FromMillimetres(1);

    /// <summary>The mark of the tape of a house.</summary>
    /// <param name="units">The units of the house.</param>
    public static Length Of(DisplayUnits units) => units == DisplayUnits.Inches ? Sixteenth : Millimetre;

    /// <summary>A figure of a sheet in inches as a house in those units keeps it: as it is, or in whole millimetres.</summary>
    /// <param name="inches">The figure.</param>
    /// <param name="units">The units of the house.</param>
    public static Length Whole(Length inches, DisplayUnits units) => units == DisplayUnits.Inches ? inches : inches.RoundNearest(Millimetre);
}

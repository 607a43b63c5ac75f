namespace TrimOut.Core.Units;

/// <summary>The system of units that a house is shown in, and that a bare number is taken in.</summary>
public enum DisplayUnits
{
    /// <summary>Inch fractions for openings, feet and inches for cable.</summary>
    Inches,

    /// <summary>Millimetres for openings, metres for cable.</summary>
    Millimetres,
}

/// <summary>What a length measures, which decides the unit that people use for it.</summary>
public enum LengthScale
{
    /// <summary>Openings, tails, brackets: inches or millimetres.</summary>
    Opening,

    /// <summary>Cable runs: feet or metres.</summary>
    Run,
}

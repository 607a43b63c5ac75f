using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>What a direct-current supply that limits itself may give and still be Class 2, by its voltage.</summary>
/// <param name="MostCurrent">The most that it may ever give.</param>
/// <param name="NameplatePower">The most that may stand on its nameplate.</param>
/// <param name="NameplateCurrent">The most current that may stand there.</param>
/// <remarks>NFPA 70-2017 chapter 9 table 11(B), inherently limited direct current. The code in force governs.</remarks>
public readonly record struct ClassTwo(Current MostCurrent, Power NameplatePower, Current NameplateCurrent)
{
    /// <summary>Where the limits were read.</summary>
    public const string Source = "NFPA 70-2017 chapter 9 table 11(B); the code in force governs";

    /// <summary>The limits for a supply.</summary>
    /// <param name="supply">More than 0 and no more than 60 V.</param>
    /// <returns>The limits, or why there are none.</returns>
    public static Result<ClassTwo> Of(Voltage supply) => supply.Volts switch
    {
        <= 0 => new Refusal($"Supply: {supply} is no direct voltage."),
        <= 20 => new ClassTwo(new(8), new(5 * supply.Volts), new(5)),
        <= 30 => new ClassTwo(new(8), new(100), new(100 / supply.Volts)),
        <= 60 => new ClassTwo(new(150 / supply.Volts), new(100), new(100 / supply.Volts)),
        _ => new Refusal($"Supply: above 60 V a Class 2 supply drives no motor; {supply} was given."),
    };
}

namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>
/// What may stand on the nameplate of a limited direct-current supply: NFPA 70-2017 chapter 9 table 11(B), worked limits of the tested voltages.
/// </summary>
public static class ClassTwo
{
    private static readonly (double Volts, double Amperes)[] Rows = [(9, 5), (14, 5), (18, 5), (21, 4.7619), (24, 4.1667), (27, 3.7037), (30, 3.3333),
        (33, 3.0303), (36, 2.7778)];

    /// <summary>The voltages that houses are rolled with.</summary>
    public static IReadOnlyList<double> Voltages { get; } = [9, 14, 18, 21, 27, 33];

    /// <summary>The most current, rounded down, that may stand there.</summary>
    public static double MostOnNameplate(double volts) => Math.Floor(Rows.First(r => r.Volts >= volts).Amperes * 100) / 100;
}

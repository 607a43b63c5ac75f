namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>What copper conductors have by published tables, row by row; nothing here is worked out from a diameter.</summary>
/// <remarks>
/// Solid gauges at 20 C: copper wire tables of the US National Bureau of Standards, Handbook 100 (from memory, read in a secondary table).
/// Stranded gauges at 75 C: NFPA 70-2017 chapter 9 table 8, uncoated (read in a published copy). Metric sizes: IEC 60228, largest at 20 C (secondary tables).
/// </remarks>
public static class Copper
{
    private const double MetresInThousandFeet = 304.8;

    private static readonly Dictionary<int,
        double> SolidOhmsPerThousandFeetAt20 = new() { [22] = 16.14, [20] = 10.15, [18] = 6.385, [16] = 4.016, [14] = 2.525, [12] = 1.588 };

    private static readonly Dictionary<int, double> StrandedOhmsPerThousandFeetAt75 = new() { [18] = 7.95, [16] = 4.99, [14] = 3.14, [12] = 1.98 };

    private static readonly Dictionary<double, (double Solid, double Fine)> MetricOhmsPerKilometreAt20 = new()
    {
        [0.5] = (36, 39),
        [0.75] = (24.5, 26),
        [1] = (18.1, 19.5),
        [1.5] = (12.1, 13.3),
        [2.5] = (7.41, 7.98),
    };

    /// <summary>The gauges that have a row, as they are written on a jacket.</summary>
    public static IReadOnlyList<int> Gauges { get; } = [12, 14, 16, 18];

    /// <summary>The metric sizes that have a row.</summary>
    public static IReadOnlyList<double> MetricSizes { get; } = [0.75, 1, 1.5, 2.5];

    /// <summary>Ohms of one metre of one conductor at 20 C.</summary>
    /// <param name="gauge">The gauge; null for a metric size.</param>
    /// <param name="squareMillimetres">The metric size.</param>
    /// <param name="stranded">Whether it is stranded.</param>
    public static double OhmsPerMetreAt20(int? gauge, double squareMillimetres, bool stranded) => gauge switch
    {
        null => (stranded ? MetricOhmsPerKilometreAt20[squareMillimetres].Fine : MetricOhmsPerKilometreAt20[squareMillimetres].Solid) / 1000,
        { } g when !stranded => SolidOhmsPerThousandFeetAt20[g] / MetresInThousandFeet,
        { } g => AtOther(StrandedOhmsPerThousandFeetAt75[g] / MetresInThousandFeet, 75, 20),
    };

    /// <summary>Ohms at another temperature, by the point at which copper would have none: FAA AC 43.13-1B, 254.5 / (234.5 + T).</summary>
    public static double AtOther(double ohms, double from, double to) => ohms * (234.5 + to) / (234.5 + from);
}

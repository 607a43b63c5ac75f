using System.Collections.Concurrent;
using System.Collections.Frozen;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>The resistance of copper conductors, by gauge and by metric size.</summary>
public static class Conductors
{
    /// <summary>Diameter of 36 AWG, in millimetres (ASTM B258).</summary>
    public const double Gauge36Millimetres = 0.127;

    /// <summary>Diameter of 0000 over diameter of 36 AWG (ASTM B258).</summary>
    public const double GaugeRatio = 92;

    /// <summary>Steps between these two gauges (ASTM B258).</summary>
    public const double GaugeSteps = 39;

    /// <summary>Conductivity of annealed copper at 20 C, in metres per ohm and square millimetre (IEC 60028).</summary>
    public const decimal CopperConductivity = 58;

    /// <summary>Rise of copper's resistance per kelvin, from its value at 20 C (IEC 60028).</summary>
    public const decimal PerKelvinFrom20 = 0.00393m;

    /// <summary>The same from the value at 75 C (NFPA 70-2017 chapter 9 table 8, note 2). Using 0.00393 from 75 C is a mistake.</summary>
    public const decimal PerKelvinFrom75 = 0.00323m;

    /// <summary>The rise per kelvin behind the temperature factors of IEC 60228.</summary>
    public const decimal PerKelvinMetric = 0.004m;

    /// <summary>
    /// Length of the wires of a stranded gauge over the length of the conductor: the ratio of the two rows of NFPA 70-2017 chapter 9 table 8, within 0.3 %.
    /// </summary>
    public const decimal StrandedLay = 1.023m;

    // A house has a handful of cables at one temperature, and asks for each of them for every run.
    private static readonly ConcurrentDictionary<(ConductorSize, Stranding, Temperature), Result<decimal>> Known = new();

    private static readonly FrozenDictionary<decimal, (decimal Class2, decimal Class5)> MostOhmsPerKilometre = new Dictionary<decimal, (decimal, decimal)>
    {
        [0.5m] = (36.0m, 39.0m),
        [0.75m] = (24.5m, 26.0m),
        [1m] = (18.1m, 19.5m),
        [1.5m] = (12.1m, 13.3m),
        [2.5m] = (7.41m, 7.98m),
    }.ToFrozenDictionary();

    /// <summary>The metric sizes that are known, in square millimetres, ascending (IEC 60228).</summary>
    public static IReadOnlyList<decimal> MetricSizes { get; } = [.. MostOhmsPerKilometre.Keys.Order()];

    /// <summary>Diameter of a solid conductor of a gauge: 0.127 mm x 92^((36 - n) / 39), ASTM B258.</summary>
    /// <param name="gauge">The gauge number, 0 to 36.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gauge.</exception>
    public static decimal MillimetresAcross(int gauge) =>
        gauge is < 0 or > 36
            ? throw new ArgumentOutOfRangeException(nameof(gauge), gauge, "Gauges go from 0 to 36.")
            : (decimal)(Gauge36Millimetres * Math.Pow(GaugeRatio, (36 - gauge) / GaugeSteps));

    /// <summary>Cross-section in square millimetres: of a gauge pi / 4 x diameter^2 by ASTM B258, of a metric size its name.</summary>
    /// <param name="size">The size; a gauge from 0 to 36.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gauge.</exception>
    public static decimal SquareMillimetres(ConductorSize size) => size switch
    {
        ConductorSize.Gauge gauge => (decimal)(Math.PI / 4 * Math.Pow((double)MillimetresAcross(gauge.Number), 2)),
        ConductorSize.Metric metric => metric.SquareMillimetres,
        _ => throw new ArgumentOutOfRangeException(nameof(size), size, "No such size."),
    };

    /// <summary>Resistance of one conductor, in ohms per metre, at a conductor temperature.</summary>
    /// <remarks>
    /// A gauge: 1 / (58 x cross-section), times 1.023 when stranded, times 1 + 0.00393 (T - 20). A metric size: the largest that
    /// IEC 60228 allows, class 2 when solid and class 5 when stranded, times 1 + 0.004 (T - 20); its nominal cross-section gives no resistance.
    /// </remarks>
    /// <returns>Ohms per metre, or which fact makes no sense.</returns>
    public static Result<decimal> OhmsPerMetre(ConductorSize size, Stranding stranding, Temperature at) =>
        Known.TryGetValue((size, stranding, at), out var known) ? known : Known.GetOrAdd((size, stranding, at), WorkedOut(size, stranding, at));

    private static Result<decimal> WorkedOut(ConductorSize size, Stranding stranding, Temperature at)
    {
        if (at.Celsius is < -60 or > 150)
            return new Refusal($"Conductor temperature: {at} is beyond what a cable stands.");
        switch (size)
        {
            case ConductorSize.Gauge { Number: < 0 or > 36 }:
                return new Refusal($"Conductor: {size} is no gauge. Gauges go from 0 to 36.");
            case ConductorSize.Gauge gauge:
                var across = MillimetresAcross(gauge.Number);
                var at20 = 1 / (CopperConductivity * 3.14159265358979m * across * across / 4);
                return at20 * (stranding == Stranding.Stranded ? StrandedLay : 1) * Warmed(PerKelvinFrom20, at);
            case ConductorSize.Metric metric when MostOhmsPerKilometre.TryGetValue(metric.SquareMillimetres, out var most):
                return (stranding == Stranding.Stranded ? most.Class5 : most.Class2) / 1000 * Warmed(PerKelvinMetric, at);
            default:
                return new Refusal($"Conductor: {size} is not in the table. Known are {string.Join(", ", MetricSizes.Select(NumberText.Plain))} mm2.");
        }
    }

    /// <summary>A resistance read at one temperature, as it is at another: by what copper does from 20 C.</summary>
    /// <param name="ohms">The resistance.</param>
    /// <param name="from">The temperature it was read at.</param>
    /// <param name="to">The temperature that it is wanted for.</param>
    public static Resistance At(Resistance ohms, Temperature from, Temperature to) =>
        ohms * (Warmed(PerKelvinFrom20, to) / Warmed(PerKelvinFrom20, from));

    /// <summary>A resistance from a 75 C table at another temperature: R x (1 + 0.00323 (T - 75)), NFPA 70-2017 chapter 9 table 8, note 2.</summary>
    public static Resistance From75(Resistance ohms, Temperature to) => ohms * (1 + PerKelvinFrom75 * (to.Celsius - 75));

    private static decimal Warmed(decimal perKelvin, Temperature at) => 1 + perKelvin * (at.Celsius - Temperature.Reference.Celsius);
}

using System.Globalization;

namespace TrimOut.TrueHouse.Tests.Runs;

/// <summary>
/// How many houses are walked, and which. TRIMOUT_TRUE_HOUSES sets how many faultless ones (60 when unset) and scales the others; TRIMOUT_TRUE_FROM
/// the first of them (1 when unset), so that thousands can be walked in slices; TRIMOUT_TRUE_SEED replays one seed, TRIMOUT_TRUE_FAULT one fault in it.
/// </summary>
public static class Seeds
{
    private const int InTheGate = 60;

    private static readonly int Houses = int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_TRUE_HOUSES"), out var houses) ? Math.Max(houses, 1)
        : InTheGate;

    /// <summary>How many houses lie before the first one of this slice.</summary>
    public static int Before { get; } = int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_TRUE_FROM"), out var from) ? Math.Max(from, 1) - 1 : 0;

    /// <summary>The seed to replay; null to walk all.</summary>
    public static int? Replayed { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("TRIMOUT_TRUE_SEED"), NumberStyles.None, CultureInfo.InvariantCulture, out var seed) ? seed : null;

    /// <summary>Whether the run is the one that the gate makes, whose outcome is known.</summary>
    public static bool AsInTheGate => Replayed is null && ReplayedFault is null && Houses == InTheGate && Before == 0;

    /// <summary>Seeds of faultless houses.</summary>
    public static IReadOnlyList<int> Faultless { get; } = Replayed is { } one ? [one] : [.. Enumerable.Range(1 + Before, Houses)];

    /// <summary>In how many houses each fault strikes: 3 in the gate, more as more houses are walked.</summary>
    public static int EachFault { get; } = Math.Max(3, Houses / 100);

    /// <summary>Seeds of houses in which two faults strike; most pairs strike one place or are not found alone, and are passed over.</summary>
    public static IReadOnlyList<int> Pairs { get; } = Replayed is { } one ? [one] : [.. Enumerable.Range(100_001 + Before, Math.Max(150, Houses))];

    /// <summary>The fault to replay with the seed.</summary>
    public static string? ReplayedFault { get; } = Environment.GetEnvironmentVariable("TRIMOUT_TRUE_FAULT");
}

namespace TrimOut.TrueHouse.Tests.Runs;

/// <summary>
/// Figures that are shown today in other units than those of the house, or finer than its tape. A test holds this list exactly: what is no longer
/// said must be taken out.
/// </summary>
public static class KnownOddFigures
{
    /// <summary>The id of the check and what is odd.</summary>
    public static IReadOnlySet<string> All { get; } = new HashSet<string>
    {
        "step-off-units: parts of a millimeter",
        // How far the bracket reaches and how far back the cable is differ there by half a mark: two such lengths are told exactly.
        "entry-under-end-bracket: finer than a sixteenth",
    };

    /// <summary>
    /// The same for what comes so seldom that the houses of the gate hear none: two lengths that differ by less than a mark of the tape are told
    /// exactly.
    /// </summary>
    public static IReadOnlySet<string> Seldom { get; } = new HashSet<string>
    {
        "entry-under-middle-screw: finer than a sixteenth",
    };
}

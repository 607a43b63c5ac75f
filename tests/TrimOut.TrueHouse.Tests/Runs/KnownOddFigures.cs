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
        "step-off-units: parts of a millimetre",
    };
}

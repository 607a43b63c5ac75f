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
        "corner-clash: finer than a sixteenth",
        "diagonals-off-sides: parts of a millimetre",
        "entry-under-centre-support: finer than a sixteenth",
        "entry-under-middle-screw: finer than a sixteenth",
        "heights-spread: parts of a millimetre",
        "hole-near-edge: parts of a millimetre",
        "out-of-square: finer than a sixteenth",
        "out-of-square: parts of a millimetre",
        "roll-past-head-cover: finer than a sixteenth",
        "roll-past-head-cover: parts of a millimetre",
        "screw-under-centre-support: finer than a sixteenth",
        "screw-under-centre-support: parts of a millimetre",
        "stack-in-the-way: finer than a sixteenth",
        "stack-in-the-way: parts of a millimetre",
        "step-off-units: parts of a millimetre",
        "tail-under-half-width: finer than a sixteenth",
        "tail-under-half-width: parts of a millimetre",
        "widths-spread: parts of a millimetre",
    };
}

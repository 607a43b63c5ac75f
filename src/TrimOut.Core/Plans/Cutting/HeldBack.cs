namespace TrimOut.Core.Plans.Cutting;

/// <summary>Why the cable of a run is not to be cut, whatever is in the boxes.</summary>
public enum HeldBack
{
    /// <summary>It is longer than its cable may be.</summary>
    TooLong,

    /// <summary>Its cable is not listed for where it goes, and nobody waived that.</summary>
    NotListed,
}

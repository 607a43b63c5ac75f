using TrimOut.Core.Units;

namespace TrimOut.Core.Geometry;

/// <summary>How a head cover sits in the depth of a reveal.</summary>
public enum RevealFit
{
    /// <summary>It is inside at its setback.</summary>
    Flush,

    /// <summary>It is inside when it is set back less.</summary>
    FlushWithLessSetback,

    /// <summary>Part of it stands out into the room.</summary>
    StandsOut,

    /// <summary>The brackets do not hold in so little depth.</summary>
    DoesNotFit,
}

/// <summary>Judges how a head cover sits in a reveal.</summary>
public static class RevealFits
{
    /// <summary>Inside when setback + cover &lt;= depth; inside with less setback when cover &lt;= depth; standing out while the brackets still hold.</summary>
    /// <param name="depth">Flat depth of the reveal.</param>
    /// <param name="setback">Distance of the front from the room face.</param>
    /// <param name="cover">How far the cover, or the unit without one, reaches back from its front.</param>
    /// <param name="needed">The least depth in which the brackets hold.</param>
    public static RevealFit Of(Length depth, Length setback, Length cover, Length needed) =>
        depth < needed ? RevealFit.DoesNotFit
        : setback + cover <= depth ? RevealFit.Flush
        : cover <= depth ? RevealFit.FlushWithLessSetback
        : RevealFit.StandsOut;
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Papers.Writing;

/// <summary>A leg of a home run in one line.</summary>
internal static class LegText
{
    /// <summary>Its way, length and place, as far as they are known.</summary>
    public static Inline Of(Leg leg) =>
        new[] { leg.Shown(LegFacts.Direction), leg.Shown(LegFacts.Length) ?? Inline.Ours("(length not noted)"), leg.Shown(LegFacts.Place) }.JoinOrDash(" ");
}

using TrimOut.Core.Houses;

namespace TrimOut.Papers.BinderSections;

/// <summary>The kinds of covering that hang in a house.</summary>
internal static class KindsInUse
{
    /// <summary>Each once, in the order of the kit.</summary>
    public static IEnumerable<CoveringKind> Of(House house) =>
        house.Units.Select(u => u.Kind).OfType<CoveringKind>().DistinctBy(k => k.Id).OrderBy(k => k.Item.Place);
}

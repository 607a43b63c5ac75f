using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks;

/// <summary>How much narrower a unit may be made than its part, where its sheet does not say it.</summary>
internal static class WidthTakenOff
{
    /// <summary>No sheet takes more off a width at each side as a rule: common practice, no published source.</summary>
    public static readonly Length MostAtEachSide = Length.FromInches(0, 1, 2);

    /// <summary>How much more than nothing may come off at each side of a unit: nothing once it is known how wide it is made.</summary>
    /// <param name="unit">The unit.</param>
    public static Length OpenAtEachSide(Unit unit) => unit.MadeWidth is null ? MostAtEachSide : Length.Zero;

    /// <summary>How wide it is made; while that is not known, as wide as it can be.</summary>
    /// <param name="unit">The unit.</param>
    public static Length? Widest(Unit unit) => unit.MadeWidth ?? unit.OwnWidth;
}

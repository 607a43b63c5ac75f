using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Papers.Drawings;

/// <summary>
/// Where a unit and its brackets sit along the head, from the left of the opening: what is left of it is below nothing. Each is null while a measure or a
/// value of the sheet is missing.
/// </summary>
/// <param name="From">Its left end.</param>
/// <param name="To">Its right end.</param>
/// <param name="LeftBracket">The bracket at its left end.</param>
/// <param name="Centre">The middle of its centre support; null for one that needs none too.</param>
/// <param name="RightBracket">The bracket at its right end.</param>
internal sealed record AlongOpening(Length? From, Length? To, Stretch? LeftBracket, Length? Centre, Stretch? RightBracket)
{
    /// <summary>Of a unit, inside or outside.</summary>
    public static AlongOpening Of(Unit unit)
    {
        if (Ends(unit, Wide(unit)) is not ({ } from, { } to))
            return new AlongOpening(null, null, null, null, null);
        var bracket = unit.Kind?[CoveringKindFacts.EndBracket];
        return new AlongOpening(from, to,
            bracket is { } left ? new Stretch(from, Length.Min(from + left, to)) : null,
            unit.NeedsCentreSupport == true ? (from + to) / 2 : null,
            bracket is { } right ? new Stretch(Length.Max(to - right, from), to) : null);
    }

    /// <summary>What has to be known before it can be said where a measured unit sits; null when nothing is lacking.</summary>
    public static Fact? Lacks(Unit unit) => unit.Kind is not { } kind ? UnitFacts.Kind
        : unit.Item.Get(UnitFacts.OrderWidth) is not null && unit.WidthUnsaid is { } unsaid ? unsaid
        : Wide(unit) is null ? UnitFacts.PartWidth
        : kind[CoveringKindFacts.EndBracket] is null ? CoveringKindFacts.EndBracket
        : null;

    /// <summary>Both ends as near as a drawing shows them: by its ordered width, and while it is not ordered by its part.</summary>
    public static (Length? From, Length? To) Drawn(Unit unit) => Ends(unit, unit.OwnWidth);

    private static (Length? From, Length? To) Ends(Unit unit, Length? wide)
    {
        if (unit.Place is not { } place)
            return (null, null);
        var past = (wide - (place.To - place.From)) / 2;
        return (place.From - past, place.To + past);
    }

    /// <summary>
    /// What is made of what was ordered; while nothing is ordered, its part. Of several in one opening nobody knows the parts before somebody wrote them.
    /// </summary>
    private static Length? Wide(Unit unit) => unit.Item.Get(UnitFacts.OrderWidth) is { } ordered ? unit.MadeFrom(ordered)
        : unit.Window.Units.Length > 1 && unit.Item.Get(UnitFacts.PartWidth) is null ? null : unit.OwnWidth;
}

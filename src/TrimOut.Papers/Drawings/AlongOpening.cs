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
        if (Ends(unit) is not ({ } from, { } to))
            return new AlongOpening(null, null, null, null, null);
        var bracket = unit.Kind?[CoveringKindFacts.EndBracket];
        return new AlongOpening(from, to,
            bracket is { } left ? new Stretch(from, Length.Min(from + left, to)) : null,
            unit.NeedsCentreSupport == true ? (from + to) / 2 : null,
            bracket is { } right ? new Stretch(Length.Max(to - right, from), to) : null);
    }

    /// <summary>Both ends: of its own width over the middle of its part; while it is not ordered, of its part inside.</summary>
    private static (Length? From, Length? To) Ends(Unit unit)
    {
        if (unit.Place is not { } place)
            return (null, null);
        var past = (unit.OwnWidth - (place.To - place.From)) / 2;
        return (place.From - past, place.To + past);
    }
}

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
        if (!PartIsSaid(unit) || unit.MadeAlong is not { } hangs)
            return new AlongOpening(null, null, null, null, null);
        var brackets = unit.EndBrackets;
        return new AlongOpening(hangs.From, hangs.To, brackets?.Left, unit.NeedsCentreSupport == true ? (hangs.From + hangs.To) / 2 : null, brackets?.Right);
    }

    /// <summary>What has to be known before it can be said where a measured unit sits; null when nothing is lacking.</summary>
    public static Fact? Lacks(Unit unit) => unit.Kind is not { } kind ? UnitFacts.Kind
        : unit.Window.Mount is null ? WindowFacts.Mount
        : !PartIsSaid(unit) ? UnitFacts.PartWidth
        : unit.MadeWidthLacks ?? (kind[CoveringKindFacts.EndBracket] is null ? CoveringKindFacts.EndBracket : null);

    /// <summary>Both ends as near as a drawing shows them: by its ordered width, and while it is not ordered by its part.</summary>
    public static (Length? From, Length? To) Drawn(Unit unit) => unit.OwnWidth is { } wide && unit.Over(wide) is { } drawn ? (drawn.From, drawn.To) : default;

    /// <summary>Of several in one opening nobody knows the parts before somebody wrote them, or what was ordered.</summary>
    private static bool PartIsSaid(Unit unit) =>
        unit.Window.Units.Length == 1 || unit.Item.Get(UnitFacts.OrderWidth) is not null || unit.Item.Get(UnitFacts.PartWidth) is not null;
}

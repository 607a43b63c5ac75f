using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>One opening. Lengths are null until they are measured.</summary>
public sealed class Window : Subject
{
    // Nearly every window has one unit.
    private Unit? _first;
    private List<Unit>? _more;

    internal Window(House house, Item item) : base(house, item) { }

    /// <summary>The units that hang in it, from the left.</summary>
    public ImmutableArray<Unit> Units
    {
        get
        {
            if (!field.IsDefault)
                return field;
            var under = House.Under(Item, ItemKind.Unit);
            return field = under.Length == 1 ? [UnitOf(under[0])] : [.. under.Select(UnitOf).OrderBy(u => u.Position ?? int.MaxValue)];
        }
    }

    /// <summary>Its tag.</summary>
    public string Tag => Item.Get(WindowFacts.Tag) ?? ItemNames.NoTag.English;

    /// <summary>The id of its room.</summary>
    public string? RoomId => Item.Get(WindowFacts.Room)?.Id;

    /// <summary>Its room; null when none was said or it was removed.</summary>
    public Room? Room => RoomId is { } id ? House.FindRoom(id) : null;

    /// <summary>Its place among the windows of its room, from 1; null for one that stands behind them as it was added.</summary>
    public int? PlaceInRoom => Item.Get(WindowFacts.PlaceInRoom);

    /// <summary>Whether it was left out on purpose.</summary>
    public bool LeftOut => Item.Get(WindowFacts.Covered) == YesNo.No;

    /// <summary>Inside or outside.</summary>
    public Mount? Mount => Item.Get(WindowFacts.Mount);

    /// <summary>Floor, ladder or scaffold.</summary>
    public Reach? Reach => Item.Get(WindowFacts.Reach);

    /// <summary>Width at framing.</summary>
    public Length? RoughWidth => Item.Get(WindowFacts.RoughWidth);

    /// <summary>Height at framing.</summary>
    public Length? RoughHeight => Item.Get(WindowFacts.RoughHeight);

    /// <summary>Depth of the reveal to its glass or frame: where it was read to the first thing in the way, what that stands out is added.</summary>
    public Length? Depth => Item.Get(WindowFacts.DepthTo) == DepthTo.FirstThing && Item.Get(WindowFacts.InTheWayDepth) is { } standsOut
        ? Item.Get(WindowFacts.Depth) + standsOut
        : Item.Get(WindowFacts.Depth);

    /// <summary>Finished widths: top, middle, bottom.</summary>
    public (Length? Top, Length? Middle, Length? Bottom) Widths =>
        (Item.Get(WindowFacts.WidthTop), Item.Get(WindowFacts.WidthMiddle), Item.Get(WindowFacts.WidthBottom));

    /// <summary>Finished heights: left, middle, right.</summary>
    public (Length? Left, Length? Middle, Length? Right) Heights =>
        (Item.Get(WindowFacts.HeightLeft), Item.Get(WindowFacts.HeightMiddle), Item.Get(WindowFacts.HeightRight));

    /// <summary>Smallest finished width; null until all three are measured.</summary>
    public Length? SmallestWidth => Widths is ({ } a, { } b, { } c) ? Length.Min(a, Length.Min(b, c)) : null;

    /// <summary>What it can't be wider than: the smallest width that is measured so far, else the rough one; null while there is none.</summary>
    public Length? WidthAtMost => new[] { Widths.Top, Widths.Middle, Widths.Bottom }.Min() ?? RoughWidth;

    /// <summary>
    /// Whether the parts of its units make more than its rough width: one of them is mistyped, and nothing is worked out of any. No once the opening is
    /// measured, where they are judged by what it measures.
    /// </summary>
    internal bool PartsMisread => SmallestWidth is null && RoughWidth is { } rough && Units.Length > 1
        && Units.Aggregate(Length.Zero, (sum, u) => sum + (u.Item.Get(UnitFacts.PartWidth) ?? Length.Zero)) > rough;

    /// <summary>Largest finished width; null until all three are measured.</summary>
    public Length? LargestWidth => Widths is ({ } a, { } b, { } c) ? Length.Max(a, Length.Max(b, c)) : null;

    /// <summary>Both finished diagonals: from the top left, from the bottom left.</summary>
    public (Length? Down, Length? Up) Diagonals => (Item.Get(WindowFacts.DiagonalDown), Item.Get(WindowFacts.DiagonalUp));

    /// <summary>Whether its diagonals can't belong to its widths and heights: then nothing is worked out of them. No while one of them is not known.</summary>
    public bool DiagonalsMisread => (Widths, Heights, Diagonals) is (({ } top, { } middle, { } bottom), ({ } left, { } centre, { } right), ({ } down, { } up))
        && (Geometry.Squareness.MeanDiagonal(down, up) - Geometry.Squareness.Diagonal((top + middle + bottom) / 3, (left + centre + right) / 3)).Abs()
            > Checks.Measures.DiagonalsOffSides.Tolerance;

    /// <summary>The widest that hangs plumb in it, and no wider than its smallest width; null until widths and diagonals are measured.</summary>
    public Length? PlumbWidth => (Widths, Diagonals) is (({ } top, { } middle, { } bottom), ({ } down, { } up))
        && !DiagonalsMisread && Geometry.PlumbWidth.Of(top, middle, bottom, down, up) is var plumb && plumb > Length.Zero
        ? Length.Min(SmallestWidth!.Value, plumb)
        : null;

    /// <summary>
    /// What units side by side may take together: the smallest width, or what hangs plumb where that is less by more than readings of widths and diagonals
    /// may be off together; null until the widths are measured.
    /// </summary>
    public Length? WidthForSeveral => SmallestWidth is not { } narrowest ? null
        : PlumbWidth is { } plumb && narrowest - plumb > TapeMark.Sixteenth * 2 ? plumb : narrowest;

    /// <summary>Largest finished height; null until all three are measured.</summary>
    public Length? LargestHeight => Heights is ({ } a, { } b, { } c) ? Length.Max(a, Length.Max(b, c)) : null;

    /// <summary>Smallest finished height; null until all three are measured.</summary>
    public Length? SmallestHeight => Heights is ({ } a, { } b, { } c) ? Length.Min(a, Length.Min(b, c)) : null;

    /// <summary>The best width known so far: finished, else rough.</summary>
    public Length? KnownWidth => SmallestWidth ?? RoughWidth;

    /// <summary>The best height known so far: finished, else rough.</summary>
    public Length? KnownHeight => LargestHeight ?? RoughHeight;

    /// <summary>The place of one of its units, from the left, from 0.</summary>
    internal int IndexOf(Unit unit) => Units.IndexOf(unit);

    /// <summary>One of its units, the same whenever it is asked for.</summary>
    internal Unit UnitOf(Item unit)
    {
        if ((_first ??= new Unit(House, unit, this)).Id == unit.Id)
            return _first;
        foreach (var view in _more ??= [])
        {
            if (view.Id == unit.Id)
                return view;
        }
        _more.Add(new Unit(House, unit, this));
        return _more[^1];
    }
}

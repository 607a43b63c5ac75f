using System.Collections.Immutable;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Cutting;

/// <summary>One cut: the running length marks between which a run lies on its box, counted from the loose end.</summary>
/// <param name="Piece">The run.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where to cut.</param>
public sealed record Cut(Piece Piece, Length From, Length To);

/// <summary>What comes out of one box, in the order in which it is cut.</summary>
/// <param name="Box">The box.</param>
/// <param name="ToBuy">Whether it is still to be bought.</param>
/// <param name="Cuts">Its cuts, first to last.</param>
/// <param name="LeftOver">Cable left in it.</param>
public sealed record BoxCuts(StockBox Box, bool ToBuy, ImmutableArray<Cut> Cuts, Length LeftOver);

/// <summary>Which run comes out of which box.</summary>
/// <param name="Boxes">The boxes that are opened; those on hand first.</param>
/// <param name="Shut">Boxes on hand that stay shut.</param>
/// <param name="ToBuy">Boxes to buy: as few as can be.</param>
/// <param name="Opened">Boxes opened, bought ones too: as few as can be with so many bought.</param>
/// <param name="OpenedLength">Cable in the boxes opened: as little as can be with so many opened, so that full boxes stay shut while part boxes do.</param>
/// <param name="LongestLeft">The longest single piece left in an opened box: as long as can be out of these boxes.</param>
public sealed record CutPlan(
    ImmutableArray<BoxCuts> Boxes,
    ImmutableArray<StockBox> Shut,
    Bounded<int> ToBuy,
    Bounded<int> Opened,
    Bounded<Length> OpenedLength,
    Bounded<Length> LongestLeft)
{
    /// <summary>Whether no plan needs fewer boxes, proven.</summary>
    public bool FewestProven => ToBuy.Proven && Opened.Proven;

    /// <summary>Whether nothing about it can be bettered, proven.</summary>
    public bool Proven => FewestProven && OpenedLength.Proven && LongestLeft.Proven;

    /// <summary>How good it is, in words: what is proven, and how far it may be off where it is not.</summary>
    /// <param name="units">What lengths are shown in.</param>
    public string Says(DisplayUnits units)
    {
        var boxes = !ToBuy.Proven ? $"{Boxed(ToBuy.Found)} to buy; it may be possible with {ToBuy.Limit}, no fewer."
            : !Opened.Proven ? $"{Boxed(Opened.Found)} opened; it may be possible with {Opened.Limit}, no fewer."
            : $"{Boxed(Opened.Found)} opened{(ToBuy.Found > 0 ? $" ({ToBuy.Found} to buy)" : "")}: no plan needs fewer.";
        var opened = OpenedLength.Proven ? ""
            : $" They hold {Show(OpenedLength.Found, units)}; {Show(OpenedLength.Limit, units)} might do.";
        var left = LongestLeft.Found == Length.Zero && LongestLeft.Proven ? " Nothing is left over."
            : LongestLeft.Proven ? $" The longest leftover is {Show(LongestLeft.Found, units)}: no plan for these boxes leaves a longer one."
            : $" The longest leftover is {Show(LongestLeft.Found, units)}; it can't be over {Show(LongestLeft.Limit, units)}.";
        return boxes + opened + left;
    }

    private static string Boxed(int count) => count == 1 ? "1 box" : $"{count} boxes";

    private static string Show(Length length, DisplayUnits units) => length.ShowRounded(units, LengthScale.Run);
}

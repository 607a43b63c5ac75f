using System.Collections.Immutable;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Cutting;

/// <summary>One run to cut: unbroken, so out of one box.</summary>
/// <param name="Id">Its name, unique in the order.</param>
/// <param name="Length">The cable that it needs, tails and allowance and all.</param>
/// <param name="Bundle">Runs of one bundle are pulled together, so each comes from a box of its own; null for a run pulled by itself.</param>
public sealed record Piece(string Id, Length Length, string? Bundle = null);

/// <summary>A box of cable on hand, full or in part.</summary>
/// <param name="Id">Its name, unique in the order.</param>
/// <param name="Length">Cable left in it.</param>
public sealed record StockBox(string Id, Length Length);

/// <summary>What is to be cut from what. All of it one type of cable.</summary>
/// <param name="Pieces">The runs.</param>
/// <param name="Boxes">The boxes on hand.</param>
/// <param name="LossPerCut">Cable lost at each cut; the last run of a box may use it up to the end without one.</param>
/// <param name="NewBox">Cable in a box that can be bought when those on hand don't do; null when none can.</param>
public sealed record CutOrder(ImmutableArray<Piece> Pieces, ImmutableArray<StockBox> Boxes, Length LossPerCut, Length? NewBox = null)
{
    /// <summary>The boxes on hand; none where none were given.</summary>
    public ImmutableArray<StockBox> Boxes { get; } = Boxes.IsDefault ? [] : Boxes;

    /// <summary>What lengths are shown in when something is wrong.</summary>
    public DisplayUnits Units { get; init; } = DisplayUnits.Inches;
}

/// <summary>How far a cut plan goes.</summary>
public enum CutAim
{
    /// <summary>Boxes only: for a parts list.</summary>
    FewestBoxes,

    /// <summary>Boxes first, then the most useful leftover.</summary>
    UsefulLeftover,
}

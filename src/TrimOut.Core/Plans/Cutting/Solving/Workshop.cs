namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>An order as whole numbers, and the best packing of it so far.</summary>
/// <remarks>
/// A loss k at every cut but none after a run that ends its box is the same as no loss, each run longer by k and each box
/// longer by k. All sizes are divided by what divides them all; a box is then rounded down, which loses nothing.
/// </remarks>
internal sealed class Workshop
{
    private readonly long _loss;
    private readonly long _unit;

    /// <summary>An order that makes sense.</summary>
    /// <param name="order">The order.</param>
    /// <param name="toBuy">How many new boxes may be used.</param>
    public Workshop(CutOrder order, int toBuy)
    {
        _loss = order.LossPerCut.Nanometres;
        var sizes = order.Pieces.Select(p => p.Length.Nanometres + _loss).ToArray();
        _unit = sizes.Aggregate(0L, Common);
        Pieces = PieceSet.Of([.. sizes.Select(s => s / _unit)], [.. order.Pieces.Select(p => p.Bundle)]);
        OnHand = [.. order.Boxes.OrderByDescending(b => b.Length).ThenBy(b => b.Id, StringComparer.Ordinal)];
        Lengths = [.. OnHand.Select(b => b.Length.Nanometres), .. Enumerable.Repeat(order.NewBox?.Nanometres ?? 0, toBuy)];
        Rooms = [.. Lengths.Select(l => (l + _loss) / _unit)];
    }

    /// <summary>The runs.</summary>
    public PieceSet Pieces { get; }

    /// <summary>Boxes on hand, longest first; in <see cref="Lengths"/> the new ones stand behind them.</summary>
    public StockBox[] OnHand { get; }

    /// <summary>Cable in each box, nm.</summary>
    public long[] Lengths { get; }

    /// <summary>Room in each box in the units of the sizes.</summary>
    public long[] Rooms { get; }

    /// <summary>How many of the boxes would be new.</summary>
    public int New => Lengths.Length - OnHand.Length;

    /// <summary>The best packing so far; null before the first.</summary>
    public Packing? Best { get; private set; }

    /// <summary>Tries to pack into some of the boxes.</summary>
    /// <param name="boxes">Numbers of the boxes.</param>
    /// <param name="budget">What it may take.</param>
    /// <param name="shortened">One of them that may be filled only so far, in units; or none.</param>
    public Verdict Try(IEnumerable<int> boxes, WorkBudget budget, (int Box, long Room)? shortened = null)
    {
        long RoomOf(int box) => shortened is { } s && s.Box == box ? s.Room : Rooms[box];

        var chosen = boxes.OrderByDescending(RoomOf).ThenBy(b => b).ToArray();
        var verdict = Packer.Try(Pieces, [.. chosen.Select(RoomOf)], budget, out var boxOf);
        if (verdict == Verdict.Fits)
            Offer(boxOf!.Select(b => chosen[b]));
        return verdict;
    }

    /// <summary>Whether a simple count shows that some of the boxes don't do.</summary>
    public bool CantDo(IEnumerable<int> boxes) => Packer.CantFit(Pieces, [.. boxes.Select(b => Rooms[b]).OrderDescending()]);

    /// <summary>Takes a packing over if it is the best so far.</summary>
    /// <param name="boxOf">The box of each piece.</param>
    public void Offer(IEnumerable<int> boxOf)
    {
        var offered = Measure([.. boxOf]);
        if (Best is null || offered.CompareTo(Best) < 0)
            Best = offered;
    }

    /// <summary>What is left of a box that is filled so far.</summary>
    /// <param name="box">The box.</param>
    /// <param name="content">What is in it, in units.</param>
    public long LeftOf(int box, long content) => Math.Max(0, Lengths[box] - content * _unit);

    /// <summary>The most that may be in a box when more than so much shall be left of it, in units.</summary>
    public long ContentThatLeavesOver(int box, long left)
    {
        var room = Lengths[box] - left - 1;
        return room < 0 ? -1 : room / _unit;
    }

    private Packing Measure(int[] boxOf)
    {
        var content = new Dictionary<int, long>();
        for (var i = 0; i < boxOf.Length; i++)
            content[boxOf[i]] = content.GetValueOrDefault(boxOf[i]) + Pieces.Sizes[i];
        return new Packing(
            boxOf,
            content.Keys.Count(b => b >= OnHand.Length),
            content.Count,
            content.Keys.Sum(b => Lengths[b]),
            content.Max(c => LeftOf(c.Key, c.Value)));
    }

    private static long Common(long a, long b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }
}

/// <summary>A packing and the figures it is judged by, in their order.</summary>
/// <param name="BoxOf">The box of each piece.</param>
/// <param name="ToBuy">New boxes used.</param>
/// <param name="Opened">Boxes used.</param>
/// <param name="OpenedLength">Cable in the boxes used, nm.</param>
/// <param name="LongestLeft">The longest piece left in one, nm.</param>
internal sealed record Packing(int[] BoxOf, int ToBuy, int Opened, long OpenedLength, long LongestLeft) : IComparable<Packing>
{
    /// <inheritdoc/>
    public int CompareTo(Packing? other) => other is null ? -1
        : (ToBuy, Opened, OpenedLength, -LongestLeft).CompareTo((other.ToBuy, other.Opened, other.OpenedLength, -other.LongestLeft));
}

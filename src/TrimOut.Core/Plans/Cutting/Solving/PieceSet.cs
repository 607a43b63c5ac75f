namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>Pieces to pack, longest first, as whole numbers; pieces of one bundle never share a box.</summary>
internal sealed class PieceSet
{
    /// <summary>A piece of no bundle.</summary>
    public const int Free = -1;

    private PieceSet(long[] sizes, int[] bundles, int[] source)
    {
        Sizes = sizes;
        Bundles = bundles;
        Source = source;
        BundleCount = bundles.Length == 0 ? 0 : bundles.Max() + 1;
        foreach (var size in sizes)
            Total += size;
        LargestBundle = bundles.Where(b => b != Free).CountBy(b => b).Select(b => b.Value).DefaultIfEmpty().Max();
    }

    /// <summary>Sizes, longest first.</summary>
    public long[] Sizes { get; }

    /// <summary>The bundle of each piece, from 0, or <see cref="Free"/>.</summary>
    public int[] Bundles { get; }

    /// <summary>Where each piece stood in what it was made from.</summary>
    public int[] Source { get; }

    /// <summary>How many bundles there are.</summary>
    public int BundleCount { get; }

    /// <summary>How many pieces the largest bundle has: the least number of boxes that it takes.</summary>
    public int LargestBundle { get; }

    /// <summary>All sizes together.</summary>
    public long Total { get; }

    /// <summary>How many pieces there are.</summary>
    public int Count => Sizes.Length;

    /// <summary>Pieces in an order that does not depend on the order they were given in, except among pieces that are alike.</summary>
    /// <param name="sizes">Sizes, longer than nothing.</param>
    /// <param name="bundles">A name of the bundle of each; null for none. A bundle of one is none.</param>
    public static PieceSet Of(IReadOnlyList<long> sizes, IReadOnlyList<string?> bundles)
    {
        var number = Enumerable.Range(0, sizes.Count)
            .Where(i => bundles[i] is not null)
            .GroupBy(i => bundles[i]!)
            .Where(g => g.Count() > 1)
            .Select(g => (g.Key, Sizes: g.Select(i => sizes[i]).OrderDescending().ToArray()))
            .OrderBy(g => g.Sizes, Comparer<long[]>.Create(Compare))
            .Select((g, at) => (g.Key, at))
            .ToDictionary(g => g.Key, g => g.at);
        var bundle = bundles.Select(b => b is not null && number.TryGetValue(b, out var at) ? at : Free).ToArray();
        var order = Enumerable.Range(0, sizes.Count).OrderByDescending(i => sizes[i]).ThenBy(i => bundle[i]).ToArray();
        return new([.. order.Select(i => sizes[i])], [.. order.Select(i => bundle[i])], order);
    }

    /// <summary>Some of these pieces; <see cref="Source"/> says which.</summary>
    /// <param name="which">Their numbers, ascending.</param>
    public PieceSet Only(int[] which) => new([.. which.Select(i => Sizes[i])], [.. which.Select(i => Bundles[i])], which);

    /// <summary>Whether two pieces can stand for each other.</summary>
    public bool Alike(int a, int b) => Sizes[a] == Sizes[b] && Bundles[a] == Bundles[b];

    private static int Compare(long[] a, long[] b)
    {
        for (var i = 0; i < Math.Min(a.Length, b.Length); i++)
        {
            if (a[i] != b[i])
                return b[i].CompareTo(a[i]);
        }
        return b.Length.CompareTo(a.Length);
    }
}

namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>Quick lower bounds on the number of boxes of one size.</summary>
internal static class SimpleBounds
{
    /// <summary>The bound L2 of Martello and Toth (1990): long pieces need boxes of their own, and middling ones fill only what these leave.</summary>
    /// <param name="sizes">Sizes, longest first, none longer than a box.</param>
    /// <param name="box">Room in a box.</param>
    public static int Boxes(ReadOnlySpan<long> sizes, long box)
    {
        var sums = new long[sizes.Length + 1];
        for (var i = 0; i < sizes.Length; i++)
            sums[i + 1] = sums[i] + sizes[i];
        var overHalf = CountOver(sizes, box / 2);
        var best = Math.Max(overHalf, (int)CeilingOf(sums[^1], box));
        for (var at = overHalf; at < sizes.Length; at++)
        {
            if (at > overHalf && sizes[at] == sizes[at - 1])
                continue;
            var least = sizes[at];
            var alone = CountOver(sizes, box - least);
            var upTo = CountAtLeast(sizes, least);
            var roomBesideLong = (overHalf - alone) * box - (sums[overHalf] - sums[alone]);
            var bound = overHalf + (int)Math.Max(0, CeilingOf(sums[upTo] - sums[overHalf] - roomBesideLong, box));
            best = Math.Max(best, bound);
        }
        return best;
    }

    private static long CeilingOf(long a, long b) => a <= 0 ? 0 : (a - 1) / b + 1;

    private static int CountOver(ReadOnlySpan<long> sizes, long limit)
    {
        var (low, high) = (0, sizes.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = sizes[middle] > limit ? (middle + 1, high) : (low, middle);
        }
        return low;
    }

    private static int CountAtLeast(ReadOnlySpan<long> sizes, long limit) => CountOver(sizes, limit - 1);
}

namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>First-fit and best-fit decreasing: the longest piece first, into the first box, or the fullest, that still takes it.</summary>
internal static class FirstFit
{
    /// <summary>The box of each piece; null when a piece found no room.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="boxes">Room in each box, in the order in which they are tried.</param>
    /// <param name="best">Whether the fullest box is taken rather than the first.</param>
    public static int[]? Pack(PieceSet pieces, ReadOnlySpan<long> boxes, bool best = false)
    {
        var boxOf = new int[pieces.Count];
        var room = boxes.ToArray();
        var holds = pieces.BundleCount == 0 ? null : new HashSet<(int, int)>();
        for (var i = 0; i < boxOf.Length; i++)
        {
            var (size, bundle) = (pieces.Sizes[i], pieces.Bundles[i]);
            var at = -1;
            for (var b = 0; b < room.Length; b++)
            {
                if (room[b] < size || (at >= 0 && room[b] >= room[at]) || (bundle != PieceSet.Free && holds!.Contains((b, bundle))))
                    continue;
                at = b;
                if (!best)
                    break;
            }
            if (at < 0)
                return null;
            room[at] -= size;
            boxOf[i] = at;
            if (bundle != PieceSet.Free)
                holds!.Add((at, bundle));
        }
        return boxOf;
    }
}

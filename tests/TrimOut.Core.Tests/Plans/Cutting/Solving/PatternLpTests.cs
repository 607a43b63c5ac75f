using TrimOut.Core.Plans;
using TrimOut.Core.Plans.Cutting.Solving;

namespace TrimOut.Core.Tests.Plans.Cutting.Solving;

public class PatternLpTests
{
    [Fact]
    public void PiecesThatFillTheirBoxesToTheEndAreNeverCalledImpossible()
    {
        var random = new Random(20260304);
        for (var at = 0; at < 200; at++)
        {
            var (sizes, demand) = Counted(Enumerable.Range(0, random.Next(2, 9)).SelectMany(_ => Parts(random, 100)));
            Assert.Equal((at, Verdict.Fits), (at, Solve(sizes, demand, [100], [(int)(demand.Zip(sizes, (d, s) => d * s).Sum() / 100)]).Verdict));
        }
    }

    [Fact]
    public void WhatIsCalledImpossibleIsSoByWeightsThatAnybodyCanAddUp()
    {
        var random = new Random(20260305);
        var impossible = 0;
        for (var at = 0; at < 300; at++)
        {
            var (sizes, demand) = Counted(Enumerable.Range(0, random.Next(6, 25)).Select(_ => (long)random.Next(20, 71)));
            long[] kinds = [100, 80];
            var first = random.Next(1, 6);
            int[] boxes = [first, Math.Max(0, (int)((sizes.Zip(demand, (s, d) => s * d).Sum() - first * 100 + 79) / 80))];
            var (verdict, lp) = Solve(sizes, demand, kinds, boxes);
            Assert.NotEqual(Verdict.Unknown, verdict);
            if (verdict != Verdict.Impossible)
                continue;
            impossible++;
            var weights = lp.Proof!;
            var needed = weights.Zip(demand, (w, d) => w * d).Sum();
            var held = kinds.Zip(boxes, (k, n) => Heaviest(sizes, demand, weights, k) * n).Sum();
            Assert.True(needed > held, $"instance {at}: {needed} against {held}");
        }
        Assert.True(impossible >= 30, $"only {impossible} were impossible");
    }

    private static (Verdict Verdict, PatternLp Lp) Solve(long[] sizes, int[] demand, long[] kinds, int[] boxes)
    {
        var lp = new PatternLp(sizes, demand, kinds, boxes, [], new WorkBudget(50_000_000, CancellationToken.None));
        return (lp.Solve(), lp);
    }

    /// <summary>The heaviest filling by trying every length of box in turn: slow, plain and exact.</summary>
    private static long Heaviest(long[] sizes, int[] demand, IReadOnlyList<long> weights, long box)
    {
        var best = new long[box + 1];
        for (var i = 0; i < sizes.Length; i++)
        {
            for (var n = 0; n < demand[i]; n++)
            {
                for (var room = box; room >= sizes[i]; room--)
                    best[room] = Math.Max(best[room], best[room - sizes[i]] + weights[i]);
            }
        }
        return best[box];
    }

    private static (long[] Sizes, int[] Demand) Counted(IEnumerable<long> pieces)
    {
        var counted = pieces.CountBy(p => p).OrderByDescending(p => p.Key).ToArray();
        return ([.. counted.Select(c => c.Key)], [.. counted.Select(c => c.Value)]);
    }

    private static IEnumerable<long> Parts(Random random, long whole)
    {
        while (whole > 0)
        {
            var part = Math.Min(whole, random.Next(15, 60));
            yield return part;
            whole -= part;
        }
    }
}

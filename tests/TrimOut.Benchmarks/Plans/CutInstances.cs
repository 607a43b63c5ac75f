using System.Globalization;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;

namespace TrimOut.Benchmarks.Plans;

/// <summary>Instances made from fixed seeds.</summary>
internal static class CutInstances
{
    /// <summary>Home runs of 25 to 190 ft out of boxes of 500 ft: what a house asks for.</summary>
    public const string House = "house";

    /// <summary>Sizes 20 to 100 out of boxes of 150: the manner of the published u instances, on which first fit decreasing is often one off.</summary>
    public const string Uniform = "uniform";

    public static CutOrder Of(string sort, int runs, int seed)
    {
        var random = new Random(seed);
        var (least, most, box) = sort == House ? (25, 190, 500) : (20, 100, 150);
        return new CutOrder(
            [.. Enumerable.Range(1, runs).Select(i => new Piece(i.ToString(CultureInfo.InvariantCulture), Length.FromFeet(random.Next(least, most + 1))))],
            [], Length.Zero, Length.FromFeet(box));
    }

    /// <summary>Instances on which first fit decreasing is not proven best by the total length: the others are no contest.</summary>
    public static IReadOnlyList<CutOrder> Contested(string sort, int runs, int count) =>
        [.. Enumerable.Range(1, 1000).Select(seed => Of(sort, runs, seed)).Where(o => FirstFit(o).Max() + 1 > AreaBound(o)).Take(count)];

    public static int AreaBound(CutOrder order) => (int)Math.Ceiling(order.Pieces.Sum(p => p.Length.Feet) / order.NewBox!.Value.Feet);

    /// <summary>First fit decreasing, written plainly: the box of each run.</summary>
    public static int[] FirstFit(CutOrder order)
    {
        var (boxOf, room) = (new int[order.Pieces.Length], new List<Length>());
        foreach (var i in Enumerable.Range(0, boxOf.Length).OrderByDescending(i => order.Pieces[i].Length))
        {
            var at = room.FindIndex(r => r >= order.Pieces[i].Length);
            if (at < 0)
            {
                at = room.Count;
                room.Add(order.NewBox!.Value);
            }
            room[at] -= order.Pieces[i].Length;
            boxOf[i] = at;
        }
        return boxOf;
    }

    /// <summary>The outside solver's answer: it gets first fit decreasing to begin with and no more boxes than that takes.</summary>
    public static (int Boxes, bool Proven)? Outside(CutOrder order, double seconds)
    {
        var first = FirstFit(order);
        var model = new Core.Tests.Plans.Cutting.ExactCutModel(order, first.Max() + 1, Length.FromFeet(1).Nanometres);
        model.Hint(first);
        return model.FewestBoxes(seconds);
    }
}

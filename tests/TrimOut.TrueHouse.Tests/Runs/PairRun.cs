using TrimOut.TrueHouse.Tests.Faults;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Runs;

/// <summary>Two faults in one house, at two places.</summary>
/// <param name="Seed">The seed of the house.</param>
/// <param name="Alone">What is heard of each where it is alone.</param>
/// <param name="Together">What is heard of each beside the other.</param>
public sealed record PairRun(int Seed, (FaultRun First, FaultRun Second) Alone, (FaultRun First, FaultRun Second) Together)
{
    /// <summary>Faults of which the second takes away what the first is about, wherever it strikes: with a unit less, an output less is needed.</summary>
    private static readonly (string First, string Second)[] TakenAway = [("more-units-than-outputs", "left-out-once-it-is-ordered")];

    /// <summary>Two faults by chance in the house of a seed; null where they are not found alone, or strike one place.</summary>
    public static PairRun? Of(int seed)
    {
        var dice = new Dice(seed);
        var (first, second) = (dice.Of(Catalogue.All), dice.Of(Catalogue.All));
        if (first == second || TakenAway.Contains((first.Id, second.Id)) || TakenAway.Contains((second.Id, first.Id))
            || FaultRun.Of(first, seed) is not { First: not null } one || FaultRun.Of(second, seed) is not { First: not null } other)
            return null;
        var house = RandomHouse.Of(seed);
        if (first.Strike(house, FaultRun.DiceFor(first, seed)) is not { } a || second.Strike(house, FaultRun.DiceFor(second, seed)) is not { } b)
            return null;
        if (!Same(a, one.Trace) || !Same(b, other.Trace) || Meet(a, b))
            return null;
        var walk = Walk.Through(house);
        return new PairRun(seed, (one, other), (FaultRun.Of(first, seed, a, walk), FaultRun.Of(second, seed, b, walk)));
    }

    /// <summary>Those that are found later beside the other than alone, or not at all.</summary>
    public IEnumerable<FaultRun> Hidden()
    {
        foreach (var (alone, together) in ((FaultRun, FaultRun)[])[(Alone.First, Together.First), (Alone.Second, Together.Second)])
        {
            if (together.First is not { } word || word.Stage > alone.First!.Stage)
                yield return together;
        }
    }

    private static bool Same(Trace a, Trace b) => a.About.SequenceEqual(b.About);

    private static bool Meet(Trace a, Trace b) =>
        a.About.Any(x => b.About.Any(y => x.StartsWith(y, StringComparison.Ordinal) || y.StartsWith(x, StringComparison.Ordinal)));
}

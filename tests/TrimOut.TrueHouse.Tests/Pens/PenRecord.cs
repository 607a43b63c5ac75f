using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.TrueHouse.Tests.Pens;

/// <summary>The slips of the pen of the gate: every sort of slip of every fact that is written in some houses, at one place each.</summary>
public static class PenRecord
{
    private const int FirstSeed = 3001;

    /// <summary>How many houses they are made in.</summary>
    public const int Houses = 2;

    /// <summary>All of them.</summary>
    public static IReadOnlyList<PenRun> All { get; } =
        [.. Enumerable.Range(FirstSeed + Runs.Seeds.Before, Houses).AsParallel().AsOrdered().WithDegreeOfParallelism(2).SelectMany(PenRun.Of)];

    /// <summary>Those by which the job comes out otherwise.</summary>
    public static IEnumerable<PenRun> ThatSpoil => All.Where(r => r.Wrong is not null);

    /// <summary>Those of them of which nothing is said.</summary>
    public static IEnumerable<PenRun> Silent => ThatSpoil.Where(r => r.Heard is null);

    /// <summary>The stored name of a fact with that of its subject.</summary>
    public static string NameOf(Fact fact) => $"{KebabCase.Of(fact.Subject)}/{fact.Name}";
}

using TrimOut.TrueHouse.Tests.Faults;

namespace TrimOut.TrueHouse.Tests.Runs;

/// <summary>How a fault is heard over several houses.</summary>
public enum Hearing
{
    /// <summary>Found in every house in the first stage whose recorded facts show it, loud enough.</summary>
    Found,

    /// <summary>Found in every house, in some of them a stage or more too late.</summary>
    Late,

    /// <summary>Found in every house in time, by a caution or a note where it asks for a stop.</summary>
    TooSoft,

    /// <summary>Found in some houses only.</summary>
    InPart,

    /// <summary>Found in none, though recorded facts show it.</summary>
    Silent,

    /// <summary>No recorded fact shows it, and nothing is said.</summary>
    Unseen,
}

/// <summary>One fault in several houses.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Runs">The houses in which its effect is larger than what readings may be off.</param>
public sealed record FaultRecord(Fault Fault, IReadOnlyList<FaultRun> Runs)
{
    private const int FirstSeed = 1001;
    private const int MostTries = 600;

    /// <summary>How it is heard.</summary>
    public Hearing Hearing =>
        Runs.All(r => r.First is null) ? Runs.All(r => r.Shown is null) ? Hearing.Unseen : Hearing.Silent
        : Runs.Any(r => r.First is null) ? Hearing.InPart
        : Runs.Any(r => r.Late > 0) ? Hearing.Late
        : Fault.AsksForAStop && Runs.Any(r => r.FirstStop is null || r.FirstStop.Stage > (r.Shown ?? r.FirstStop.Stage)) ? Hearing.TooSoft
        : Hearing.Found;

    /// <summary>The record of every fault.</summary>
    public static IReadOnlyList<FaultRecord> All { get; } =
        [.. Catalogue.All.Where(f => Seeds.ReplayedFault is not { } one || f.Id == one).AsParallel().AsOrdered().WithDegreeOfParallelism(2)
            .Select(f => Of(f, Seeds.EachFault))];

    /// <summary>Lets a fault strike so many houses that can have it and in which it is larger than what readings may be off.</summary>
    public static FaultRecord Of(Fault fault, int houses)
    {
        var seeds = Seeds.Replayed is { } one ? [one] : Enumerable.Range(FirstSeed + Seeds.Before, MostTries + (40 * houses));
        return new FaultRecord(fault, [.. seeds.Select(s => FaultRun.Of(fault, s)).OfType<FaultRun>().Where(r => r.Trace.PastError).Take(houses)]);
    }
}

using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Kept;

/// <summary>
/// A short piece of work on a house, as a script does it many times a day. In a large house it leaves the journal beside the file when it is done,
/// and keeps what the history makes: neither is to be written and worked out anew for each value.
/// </summary>
/// <param name="KeptIn">The folder in which that is kept, this user's own; null keeps nothing.</param>
/// <param name="LargeFrom">From how many bytes on a house file is large.</param>
public sealed record BriefWork(string? KeptIn, long LargeFrom = BriefWork.Large)
{
    /// <summary>16 MiB, some 28,000 changes: up to there writing the file anew takes a fraction of what starting the program takes.</summary>
    public const long Large = 16 << 20;

    /// <summary>Work that is not brief: no journal is left, and what the history makes is kept for the brief work to come.</summary>
    /// <param name="keptIn">The folder.</param>
    /// <param name="largeFrom">From how many bytes on a house file is large.</param>
    public static BriefWork Not(string? keptIn, long largeFrom = Large) => new(keptIn, largeFrom) { IsBrief = false };

    /// <summary>Whether it is brief.</summary>
    internal bool IsBrief { get; private init; } = true;

    /// <summary>How many changes may have come since the fold that is kept before it is kept anew.</summary>
    internal const int BehindAtMost = 1000;

    private const int PartOfFile = 32;

    /// <summary>Whether a journal stays beside its file: as long as reading it takes little beside reading the file.</summary>
    internal bool LeavesJournal(long file, long journal) => IsBrief && file >= LargeFrom && journal <= Math.Max(Journal.Room, file / PartOfFile);
}

namespace TrimOut.Core.Reads;

/// <summary>Things that were worked out, each with what it read.</summary>
internal interface IReadSets
{
    /// <summary>What they are of: another object when there are others.</summary>
    object Sources { get; }

    /// <summary>How many there are.</summary>
    int Count { get; }

    /// <summary>What one of them read.</summary>
    ReadOnlySpan<long> Reads(int at);

    /// <summary>Where the things are now that were worked out of earlier sources, by their places then; negative for what is gone.</summary>
    /// <returns>Null when these did not come directly from those.</returns>
    int[]? MovedFrom(object sources);
}

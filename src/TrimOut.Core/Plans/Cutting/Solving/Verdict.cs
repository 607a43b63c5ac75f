namespace TrimOut.Core.Plans.Cutting.Solving;

/// <summary>What is known about whether pieces fit into boxes.</summary>
internal enum Verdict
{
    /// <summary>The steps ran out before it was known.</summary>
    Unknown,

    /// <summary>They do; a packing is there.</summary>
    Fits,

    /// <summary>They don't, proven.</summary>
    Impossible,
}

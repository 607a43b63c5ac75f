namespace TrimOut.Core.Plans;

/// <summary>What is known about whether a thing can be done at all.</summary>
internal enum Verdict
{
    /// <summary>The steps ran out before it was known.</summary>
    Unknown,

    /// <summary>It can; how is there too.</summary>
    Fits,

    /// <summary>It can't, proven.</summary>
    Impossible,
}

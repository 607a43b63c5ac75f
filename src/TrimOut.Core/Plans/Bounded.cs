namespace TrimOut.Core.Plans;

/// <summary>A figure of a plan and the best that any plan could have.</summary>
/// <typeparam name="T">A count or a length.</typeparam>
/// <param name="Found">What the plan has.</param>
/// <param name="Limit">What no plan can better.</param>
public sealed record Bounded<T>(T Found, T Limit)
    where T : IEquatable<T>
{
    /// <summary>Whether no plan is better in this, proven.</summary>
    public bool Proven => Found.Equals(Limit);
}

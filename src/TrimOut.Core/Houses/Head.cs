using TrimOut.Core.History;

namespace TrimOut.Core.Houses;

/// <summary>One value of a field, with who put it there.</summary>
/// <param name="Id">The change that put it.</param>
/// <param name="Stored">The value in its stored form; null when it was taken away.</param>
/// <param name="Value">The decoded value; null when there is none or this version can't read it.</param>
/// <param name="By">Who.</param>
/// <param name="At">When, by that device's clock.</param>
public sealed record Head(ChangeId Id, string? Stored, object? Value, string By, DateTimeOffset At)
{
    /// <summary>The stamp of the change that put it.</summary>
    public long Stamp { get; init; }

    /// <summary>Whether it was put later than another value, by the order of the history: no clock is asked, for a laptop's may be wrong.</summary>
    public bool IsAfter(Head other) => Change.Order(Stamp, Id, other.Stamp, other.Id) > 0;
}

using System.Collections.Immutable;
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

/// <summary>One thing in the house and its facts, as the history left them.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Under">The id of the item it belongs to; empty for the house itself.</param>
/// <param name="Place">Its place in the order in which items were added.</param>
/// <param name="Fields">Field name to the values in force: one, or more when two devices disagree (the last is shown).</param>
public sealed record Item(string Id, ItemKind Kind, string Under, int Place, ImmutableDictionary<string, ImmutableArray<Head>> Fields)
{
    /// <summary>The field that takes an item out of the house without losing it.</summary>
    public const string RemovedField = "removed";

    /// <summary>Whether it was taken out of the house.</summary>
    public bool Removed => Latest(RemovedField)?.Stored is not null;

    /// <summary>The value that is shown for a field, or null.</summary>
    public Head? Latest(string field) => Fields.TryGetValue(field, out var heads) ? heads[^1] : null;
}

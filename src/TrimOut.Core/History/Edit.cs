using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>One part of a change. The family is closed: a kind that this version does not know is kept as <see cref="Unread"/>.</summary>
public abstract record Edit
{
    private Edit() { }

    /// <summary>A new item.</summary>
    /// <param name="Item">Its id, unique in the house for ever.</param>
    /// <param name="Kind">What it is.</param>
    /// <param name="Under">The id of the item it belongs to.</param>
    public sealed record Add(string Item, ItemKind Kind, string Under) : Edit;

    /// <summary>A value put to a fact of an item.</summary>
    /// <param name="Item">The item's id.</param>
    /// <param name="Field">The fact's field.</param>
    /// <param name="Value">The value in its stored form; null takes the value away.</param>
    /// <param name="Over">The changes whose value this one replaces; two changes over the same one are a conflict.</param>
    public sealed record Put(string Item, string Field, string? Value, ImmutableArray<ChangeId> Over) : Edit;

    /// <summary>Takes a change out of force, or back into it when that change was itself an undo.</summary>
    /// <param name="Of">The change.</param>
    public sealed record Undo(ChangeId Of) : Edit;

    /// <summary>An edit that a newer version wrote: kept, and passed on as it came.</summary>
    /// <param name="Json">Its text.</param>
    public sealed record Unread(string Json) : Edit;
}

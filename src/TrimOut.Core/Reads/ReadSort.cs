namespace TrimOut.Core.Reads;

/// <summary>The sorts of reads there are.</summary>
internal enum ReadSort
{
    /// <summary>One field of an item.</summary>
    Field,

    /// <summary>All values of a keyed fact of an item.</summary>
    AllOfAFact,

    /// <summary>All fields of an item.</summary>
    AllFields,

    /// <summary>The items below an item.</summary>
    Children,

    /// <summary>Whether an item is in the house.</summary>
    Presence,

    /// <summary>All items of a kind.</summary>
    ItemsOfAKind,

    /// <summary>A list of items in its order: rooms, windows, removals, whatever there is.</summary>
    ListOfItems,

    /// <summary>That there is no item of an id.</summary>
    NoSuchItem,

    /// <summary>What a lookup has under a key.</summary>
    LookupKey,

    /// <summary>What stands before a key of a lookup.</summary>
    LookupNeighbor,

    /// <summary>The whole of a lookup in its order.</summary>
    WholeLookup,
}

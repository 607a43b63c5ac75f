namespace TrimOut.Core.History;

/// <summary>Where the changes of one open house are kept.</summary>
public interface IHouseStore
{
    /// <summary>Where it is, for the user.</summary>
    string Where { get; }

    /// <summary>The name that this device's changes carry in this house.</summary>
    string Device { get; }

    /// <summary>Why nothing can be saved; null when it can.</summary>
    string? ReadOnlyBecause { get; }

    /// <summary>The changes that were there when the house was opened.</summary>
    IReadOnlyList<Change> Opened { get; }

    /// <summary>What <see cref="Opened"/> makes, where that was kept and need not be worked out; else null.</summary>
    HouseLog? Kept => null;

    /// <summary>
    /// Why what was called saved is not to be found again where it is kept, by a look at it now; null where it is, or nobody can tell.
    /// </summary>
    string? NotHeldBecause => null;

    /// <summary>Saves one change, whole, before it returns.</summary>
    /// <exception cref="HouseStoreException">It could not be saved; nothing was.</exception>
    void Append(Change change);

    /// <summary>Saves changes that another copy of the house has and this one has not, all of them or none, before it returns.</summary>
    /// <param name="changes">The changes, in their order.</param>
    /// <exception cref="HouseStoreException">They could not be saved; none was.</exception>
    void Take(IReadOnlyList<Change> changes);
}

/// <summary>A house could not be opened or a change could not be saved; the message is for the user and says what to do.</summary>
public sealed class HouseStoreException : Exception
{
    /// <summary>With no message.</summary>
    public HouseStoreException() { }

    /// <summary>With a message for the user.</summary>
    public HouseStoreException(string message) : base(message) { }

    /// <summary>With a message for the user, and what lies behind it.</summary>
    public HouseStoreException(string message, Exception inner) : base(message, inner) { }

    /// <summary>With what sort of thing is wrong, and a message for the user.</summary>
    public HouseStoreException(StoreFault fault, string message, Exception? inner = null) : base(message, inner) => Fault = fault;

    /// <summary>What sort of thing is wrong.</summary>
    public StoreFault Fault { get; }

    /// <summary>Whether only what was saved since the file was last written is damaged, and the file itself is sound.</summary>
    public bool JournalOnly { get; init; }

    /// <summary>The house file that is missing, damaged or no house file, by its whole path: backups of it may be there. Null where it is about
    /// something else.</summary>
    public string? House { get; init; }

    /// <summary>How many saves are in doubt at the least, where a journal is damaged; 0 where nobody knows how many, null where none is.</summary>
    public long? InDoubt { get; init; }
}

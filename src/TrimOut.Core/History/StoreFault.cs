namespace TrimOut.Core.History;

/// <summary>What sort of thing is wrong with a house file.</summary>
public enum StoreFault
{
    /// <summary>The disk failed.</summary>
    Disk,

    /// <summary>There is no such file.</summary>
    NotThere,

    /// <summary>There is one already.</summary>
    AlreadyThere,

    /// <summary>It is no house file.</summary>
    Foreign,

    /// <summary>It is a house file, and damaged.</summary>
    Damaged,

    /// <summary>Another program has it open.</summary>
    InUse,

    /// <summary>There is no right to read or to write.</summary>
    NoRights,
}

namespace TrimOut.HouseFile.Files;

/// <summary>
/// The few things that a house file asks of a disk. All that must last goes through here, so that a test can record it and rebuild what a crash would
/// have left.
/// </summary>
internal interface IFileLayer
{
    /// <summary>Whether there is a file of that name, or something else that has it.</summary>
    bool Exists(string path);

    /// <summary>All bytes of a file.</summary>
    byte[] Read(string path);

    /// <summary>Opens a file that may be long, to read it piece by piece.</summary>
    IReadFile OpenToRead(string path);

    /// <summary>The first bytes of a file; all of a shorter one.</summary>
    byte[] ReadStart(string path, int count);

    /// <summary>The last bytes of a file; all of a shorter one.</summary>
    byte[] ReadEnd(string path, int count);

    /// <summary>The length of a file in bytes.</summary>
    long LengthOf(string path);

    /// <summary>The SHA-256 of all of a file but its last bytes, by <see cref="Durable.Trailer.Hash"/>, without holding it all at once.</summary>
    string HashWithout(string path, int last);

    /// <summary>
    /// A new file that only its owner may read, or that may be read by those who could read <paramref name="like"/>; a leftover of that name goes.
    /// </summary>
    IOpenFile Create(string path, string? like = null);

    /// <summary>Opens a file that is there, to write within it.</summary>
    IOpenFile Open(string path);

    /// <summary>Renames a file, over another where there is one.</summary>
    void Rename(string from, string to);

    /// <summary>Deletes a file where there is one.</summary>
    void Delete(string path);

    /// <summary>Brings the names in a file's folder to the disk.</summary>
    void FlushFolderOf(string path);

    /// <summary>When the file of that name was made, as its disk keeps it: a copy has another birth. Null where the disk does not know.</summary>
    string? BirthOf(string path);

    /// <summary>Holds on to the file of that name, to tell whether the name still leads to it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="isOpen">Whether this program has it open for as long as the name is held, so that it need not be opened for that.</param>
    /// <exception cref="IOException">There is no such file.</exception>
    IHeldName Hold(string path, bool isOpen);

    /// <summary>How many names the file of that name has: one, unless somebody linked it. Null where the disk does not know.</summary>
    int? NamesOf(string path);

    /// <summary>Why a file can't be replaced, where that can be told beforehand.</summary>
    string? ReadOnlyBecause(string path);

    /// <summary>Holds a name for as long as this program lives; null when another one holds it.</summary>
    IDisposable? TryHold(string path);
}

/// <summary>A file that is held on to by its name.</summary>
internal interface IHeldName : IDisposable
{
    /// <summary>Whether the name leads to the file itself: not to another one, not to nothing, and over no link.</summary>
    bool StillLeadsThere { get; }
}

/// <summary>A file that is read piece by piece.</summary>
internal interface IReadFile : IDisposable
{
    /// <summary>Its length when it was opened, in bytes.</summary>
    long Length { get; }

    /// <summary>Reads what stands at a place.</summary>
    /// <param name="at">The place.</param>
    /// <param name="into">Where the bytes go.</param>
    /// <returns>How many there were: fewer than asked for only where the file ends.</returns>
    int Read(long at, Span<byte> into);
}

/// <summary>A file that is being written.</summary>
internal interface IOpenFile : IDisposable
{
    /// <summary>Its length in bytes.</summary>
    long Length { get; }

    /// <summary>The bytes at a place; fewer where it ends before.</summary>
    byte[] Read(long at, int count);

    /// <summary>Writes at a place.</summary>
    void Write(long at, ReadOnlySpan<byte> bytes);

    /// <summary>Cuts it to a length.</summary>
    void Cut(long length);

    /// <summary>Returns when everything written is on the disk.</summary>
    void FlushToDisk();
}

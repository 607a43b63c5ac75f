using System.Globalization;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile;

/// <summary>Puts the system's errors into the user's words.</summary>
internal static class Faults
{
    private const int NoSpaceOnUnix = 28;
    private const int NoQuotaOnLinux = 122;
    private const int NoQuotaOnMac = 69;
    private const int ReadOnlyOnUnix = 30;
    private const int NoSpaceOnWindows = 0x70;
    private const int ReadOnlyOnWindows = 0x13;

    /// <summary>Whether it is the disk's doing rather than ours.</summary>
    public static bool OfDisk(Exception failed) => failed is IOException or UnauthorizedAccessException;

    /// <summary>What a save ran into.</summary>
    public static HouseStoreException Saving(string path, Exception failed) => failed switch
    {
        UnauthorizedAccessException => new(StoreFault.NoRights, $"Not saved: there is no right to write {path}. Save a copy somewhere else.", failed),
        IOException io when IsFull(io) => new(StoreFault.Disk,
            $"Not saved: the disk that {path} is on is full. Make room and try again, or save a copy somewhere else.", failed),
        DirectoryNotFoundException or FileNotFoundException =>
            new(StoreFault.NotThere,
                $"Not saved: {path} is gone. If it was on a stick, put it back and open the house again, or save a copy somewhere else.", failed),
        IOException io when IsReadOnly(io) => new(StoreFault.Disk, $"Not saved: the disk that {path} is on is read-only. Save a copy somewhere else.", failed),
        _ => new(StoreFault.Disk, $"Not saved: {path} can't be written ({failed.Message}). Save a copy somewhere else.", failed),
    };

    /// <summary>What opening ran into.</summary>
    public static HouseStoreException Opening(string path, Exception failed) => failed switch
    {
        UnauthorizedAccessException => new(StoreFault.NoRights, $"There is no right to read {path}.", failed),
        DirectoryNotFoundException or FileNotFoundException when !Path.Exists(path) => NotThere(path),
        DirectoryNotFoundException or FileNotFoundException => new(StoreFault.NotThere, PlainFile.WhyNotRead(path, failed), failed) { House = path },
        NotAFileException => new(StoreFault.NotThere, failed.Message, failed),
        _ => new(StoreFault.Disk, PlainFile.WhyNotRead(path, failed), failed),
    };

    /// <summary>Why a house is opened for reading only, where nothing can be written beside it.</summary>
    public static string NothingBeside(string path, Exception failed) => failed switch
    {
        UnauthorizedAccessException { InnerException: UnauthorizedAccessException } told => told.Message,
        UnauthorizedAccessException => $"there is no right to write in {Path.GetDirectoryName(path)}.",
        IOException io when IsFull(io) => $"the disk that {path} is on is full.",
        IOException io when IsReadOnly(io) => $"the disk that {path} is on is read-only.",
        _ => $"nothing can be written beside {path} ({failed.Message.TrimEnd('.')}).",
    };

    /// <summary>There is no such house file; where its journal lies there all the same, that is said, and how to come by what it holds.</summary>
    public static HouseStoreException NotThere(Surroundings here, HouseFileNames names) => here.Files.Exists(names.Journal)
        ? new(StoreFault.NotThere, FreeName.OnlyJournal(here, names)) { House = names.Main }
        : NotThere(names.Main);

    private static HouseStoreException NotThere(string path) =>
        new(StoreFault.NotThere, $"There is no house file {path}. To begin one: trimout new {ShellWord.Of(path)}") { House = path };

    /// <summary>It is damaged.</summary>
    public static HouseStoreException Damaged(string path, string what) =>
        new(StoreFault.Damaged,
            $"{path} is damaged: {what} Nothing was changed. To bring what is sound into a new file: trimout rescue {ShellWord.Of(path)} NEW.trimout")
        { House = path };

    /// <summary>Its journal is damaged, or missing, or not its own; the file itself is sound.</summary>
    /// <param name="names">The files.</param>
    /// <param name="what">What is wrong.</param>
    /// <param name="inDoubt">How many saves may be lost; null when nobody knows.</param>
    /// <param name="id">The journal that is missing, for a look at whether it lies under another name; null where it is there.</param>
    public static HouseStoreException JournalDamaged(HouseFileNames names, string what, long? inDoubt, string? id = null)
    {
        var elsewhere = id is not null && LooseJournals.Of(id, names) is { Count: > 0 } found
            ? $" In the same folder {string.Join(" and ", found)} goes on from it: it was most likely left under the name that the house file had before. "
                + $"Rename it to {names.Journal}." : "";
        var saves = inDoubt switch
        {
            null or 0 => "How many saves are in doubt can't be told.",
            1 => "At least 1 save is in doubt.",
            { } many => string.Create(CultureInfo.InvariantCulture, $"At least {many} saves are in doubt."),
        };
        return new(StoreFault.Damaged,
            $"{names.Main} is damaged in its journal: {what}{elsewhere} {saves} Nothing was changed. "
            + $"To bring what is sound into a new file: trimout rescue {ShellWord.Of(names.Main)} NEW.trimout")
        { JournalOnly = true, InDoubt = inDoubt ?? 0, House = names.Main };
    }

    /// <summary>Whether a disk that is read-only is what failed.</summary>
    public static bool IsReadOnly(IOException failed) => OperatingSystem.IsWindows() ? (failed.HResult & 0xffff) == ReadOnlyOnWindows
        : failed.HResult == ReadOnlyOnUnix;

    /// <summary>Whether a full disk, or a user's full share of one, is what failed.</summary>
    public static bool IsFull(IOException failed) => OperatingSystem.IsWindows()
        ? (failed.HResult & 0xffff) == NoSpaceOnWindows
        : IsFullOnUnix(failed.HResult, OperatingSystem.IsMacOS());

    /// <summary>The same by the number of an error (errno.h of Linux, and of macOS).</summary>
    internal static bool IsFullOnUnix(int error, bool isMac) => error == NoSpaceOnUnix || error == (isMac ? NoQuotaOnMac : NoQuotaOnLinux);
}

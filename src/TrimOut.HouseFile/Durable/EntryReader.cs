using System.Globalization;
using TrimOut.Core.History;

namespace TrimOut.HouseFile.Durable;

/// <summary>Reads the changes out of sound entries.</summary>
internal static class EntryReader
{
    /// <summary>The changes, and how many of them only a newer program can read.</summary>
    public static (IReadOnlyList<Change> Changes, int Newer) Changes(HouseFileNames names, IReadOnlyList<Entry> entries)
    {
        var changes = new List<Change>(entries.Count);
        var newer = 0;
        foreach (var entry in entries)
        {
            if (ChangeJson.VersionOf(entry.Json) > ChangeJson.Version)
            {
                newer++;
                continue;
            }
            var read = ChangeJson.Read(entry.Json);
            if (!read.Ok)
                throw Faults.Damaged(names.Main, string.Create(CultureInfo.InvariantCulture, $"entry {entry.Number}: {read.Reason}"));
            changes.Add(read.Value);
        }
        return (changes, newer);
    }

    /// <summary>Why a house that a newer program wrote can't be saved here.</summary>
    public static string NewerBecause(int unread) => unread == 0
        ? "it was written by a newer TrimOut. Bring this one up to date to work on it."
        : string.Create(CultureInfo.InvariantCulture,
            $"it was written by a newer TrimOut, and {unread} of its changes can't be read here. Bring this one up to date to work on it.");

    /// <summary>What to say of a save that never ended.</summary>
    /// <param name="sound">The house.</param>
    /// <param name="keptIn">Where the bytes are kept from now on; null when the house is only looked at, and they stay where they are.</param>
    /// <returns>What to say; null when no save was torn.</returns>
    public static string? RemarkOn(Sound sound, string? keptIn)
    {
        if (sound.Unread == 0)
            return null;
        var what = sound.Ended
            ? string.Create(CultureInfo.InvariantCulture,
                $"Behind the end of the house's journal, after change {sound.Entries.Count}, lie {sound.Unread} bytes that are no save which ended.")
            : string.Create(CultureInfo.InvariantCulture,
                $"The program or the power stopped in the middle of a save: {sound.Unread} bytes after change {sound.Entries.Count} could not be read.");
        return $"{what} Look at the last thing that you typed.{(keptIn is null ? "" : $" The bytes are kept in {keptIn}.")}";
    }
}

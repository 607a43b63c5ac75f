using TrimOut.Core.History;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Backups;

namespace TrimOut.Desks;

/// <summary>Where the backups of each house are kept: in this user's folder unless another place was set.</summary>
internal static class BackupPlace
{
    private static string Usual => Path.Combine(UserFolder.Path, "backups");

    /// <summary>The folder of one house's backups.</summary>
    /// <param name="house">The house, open.</param>
    public static BackupFolder Of(HouseOnDisk house) =>
        new(Path.Combine(Settings.Read().Backups ?? Usual, $"{Path.GetFileNameWithoutExtension(house.Where)}-{house.House}"));

    /// <summary>Earlier backups of a house that lie elsewhere: it had another file name then, or backups were kept in another place.</summary>
    public static IReadOnlyList<BackupFolder> Earlier(HouseOnDisk house) =>
        [.. Folders(name => name.EndsWith("-" + house.House, StringComparison.Ordinal)).Where(f => f.Path != Of(house).Path)];

    /// <summary>
    /// The backups that a house of a file name may have, though the file can't be read or is not there: of the house that its last page or its journal
    /// says, else of each house whose backups have the file's name.
    /// </summary>
    /// <param name="path">The file.</param>
    public static IReadOnlyList<HouseBackups> Named(string path)
    {
        var (stem, house) = (Path.GetFileNameWithoutExtension(path) + "-", HouseOnDisk.HouseOf(path));
        return [.. Folders(name => house is not null ? name.EndsWith("-" + house, StringComparison.Ordinal)
            : name.StartsWith(stem, StringComparison.Ordinal) && !name[stem.Length..].Contains('-', StringComparison.Ordinal))
            .GroupBy(f => HouseIn(f.Path), StringComparer.Ordinal)
            .Select(g => new HouseBackups(g.Key, [.. g.OrderByDescending(f => Path.GetFileName(f.Path) == stem + g.Key)]))];
    }

    private static string HouseIn(string folder) => Path.GetFileName(folder) is var name ? name[(name.LastIndexOf('-') + 1)..] : "";

    /// <summary>Where backups may be that can't be looked at now, in a sentence for each such place.</summary>
    public static IReadOnlyList<string> MayBeElsewhere
    {
        get
        {
            var settings = Settings.Read();
            return [.. settings.BackupsBefore.Prepend(settings.Backups).OfType<string>().Distinct().Where(f => !Directory.Exists(f))
                .Select(f => $"Backups may be in {f}, which is not there."),
                .. settings.Unread is { } why ? [$"Backups may be in a folder that {UserFolder.Settings} names, which can't be read: {why}"]
                    : Array.Empty<string>()];
        }
    }

    /// <summary>Why no backup can be made: the folder that the user said is gone, and may be on a disk that is not here. Null where one can.</summary>
    public static string? CannotBecause() => Settings.Read().Backups is { } folder && !Directory.Exists(folder)
        ? $"No backup was made: the folder for backups, {folder}, is not there. Bring it back, or say where else: trimout backup --keep-in FOLDER" : null;

    /// <summary>That nobody knows where the user wanted backups to be kept; null where that is known.</summary>
    public static string? NotKnownWhere() => Settings.Read().Unread is { } why
        ? $"{UserFolder.Settings} can't be read: {why} It counts as never written, and if it said where backups are kept, they are not kept there now but in "
            + $"{Usual}. To say it again, which keeps what is there beside a new one: trimout backup --keep-in FOLDER" : null;

    private static IReadOnlyList<BackupFolder> Folders(Func<string, bool> has)
    {
        var settings = Settings.Read();
        return [.. settings.BackupsBefore.Prepend(settings.Backups ?? Usual).Append(Usual).Distinct().Where(Directory.Exists)
            .SelectMany(Directory.GetDirectories).Where(f => has(Path.GetFileName(f))).Select(f => new BackupFolder(f)).Where(f => f.All.Count > 0)];
    }

    /// <summary>Keeps backups in a folder from now on, which is made now: where it is gone later, it is missed.</summary>
    /// <exception cref="IOException">That can't be remembered: backups are kept where they were.</exception>
    /// <exception cref="UnauthorizedAccessException">There is no right to.</exception>
    public static void KeepIn(string folder)
    {
        Directory.CreateDirectory(folder);
        Settings.Read().KeepingIn(folder).WriteOrFail();
    }

    /// <summary>Makes the usual place where there is none, for this user alone; a place that the user set is left as it is.</summary>
    public static void Make()
    {
        UserFolder.Make(UserFolder.Path);
        UserFolder.Make(Usual);
    }

    /// <summary>Makes a backup of a house that was opened to be worked on.</summary>
    /// <returns>What to tell the user when none could be made; else null.</returns>
    public static string? Keep(HouseOnDisk house)
    {
        if (house.ReadOnlyBecause is not null)
            return null;
        if (CannotBecause() is { } because)
            return because;
        try
        {
            if (Settings.Read().Backups is null)
                Make();
            // Where a large house's journal was left, the file that makes it large is in the backup that was made before.
            Of(house).Keep(house.Where, TimeProvider.System, onceADay: house.WentOn);
            return null;
        }
        catch (HouseStoreException failed)
        {
            return failed.Message;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return $"No backup was made: {failed.Message}";
        }
    }
}

/// <summary>The backups of one house.</summary>
/// <param name="House">The name that all copies of the house share.</param>
/// <param name="Folders">The folders, that of today first; each has a backup.</param>
internal sealed record HouseBackups(string House, IReadOnlyList<BackupFolder> Folders);

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
    }
}

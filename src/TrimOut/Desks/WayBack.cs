using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Backups;

namespace TrimOut.Desks;

/// <summary>What is said of the backups of a house that is missing or damaged: that there are some, which is the newest, and what to type.</summary>
internal static class WayBack
{
    /// <summary>What to add to the message of a house that can't be opened; null where there are no backups, or it is about something else.</summary>
    public static string? From(Exception failed) => (failed as HouseStoreException ?? failed.InnerException as HouseStoreException)?.House is { } house
        ? From(house) : null;

    /// <summary>The way back to a house by its newest backup; null where there is none.</summary>
    /// <param name="house">The house file, whether it is there or not.</param>
    public static string? From(string house) => Newest(house) is { } newest
        ? $"{newest} To put it back: trimout restore {house} {Latest(house)!.Path}{(HouseOnDisk.IsFree(house) ? "" : " --replace")}" : null;

    /// <summary>How a rescue goes on with the newest backup; null where there is none.</summary>
    /// <param name="house">The damaged file.</param>
    public static string? ForRescue(string house) => Newest(house) is { } newest
        ? $"{newest} To fill gaps from it: --also {Latest(house)!.Path}" : null;

    private static string? Newest(string house) => Latest(house) is not { } latest ? null : string.Create(CultureInfo.InvariantCulture,
        $"Of a house of that name there {Counted(house)}, the newest of {latest.MadeAt.ToLocalTime():yyyy-MM-dd HH:mm} {Holding(latest)}: ")
        + $"trimout backups {house} lists them.";

    private static string Counted(string house) =>
        BackupPlace.Named(house).Sum(f => f.All.Count) is var many && many == 1 ? "is 1 backup" : $"are {many} backups";

    private static string Holding(Backup backup) => BackupFolder.ChangesIn(backup) is { } changes
        ? $"with {NumberText.Counted((int)changes, "change")}" : "which is damaged";

    /// <summary>The newest that can be read, else the newest.</summary>
    private static Backup? Latest(string house)
    {
        var all = BackupPlace.Named(house).SelectMany(f => f.All).OrderByDescending(b => b.MadeAt).ToList();
        return all.FirstOrDefault(b => BackupFolder.ChangesIn(b) is not null) ?? all.FirstOrDefault();
    }
}

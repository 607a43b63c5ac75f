using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Backups;
using TrimOut.HouseFile.Files;

namespace TrimOut.Desks;

/// <summary>What is said of the backups of a house that is missing or damaged: of which houses there are some, which is the newest, and what to type.</summary>
internal static class WayBack
{
    /// <summary>What to add to the message of a house that can't be opened; null where there are no backups, or it is about something else.</summary>
    public static string? From(Exception failed) => (failed as HouseStoreException ?? failed.InnerException as HouseStoreException)?.House is { } house
        ? From(house) : null;

    /// <summary>The way back to a house by its newest backup, and where else backups may be; null where nothing is known of any.</summary>
    /// <param name="house">The house file, whether it is there or not.</param>
    public static string? From(string house)
    {
        var free = HouseOnDisk.IsFree(house);
        return Said(house, newest => $"To put it back: trimout restore {ShellWord.Of(house)} {ShellWord.Of(newest.Path)}{(free ? "" : " --replace")}");
    }

    /// <summary>How a rescue goes on with the newest backup; null where nothing is known of any.</summary>
    /// <param name="house">The damaged file.</param>
    public static string? ForRescue(string house) => Said(house, newest => $"To fill gaps from it: --also {ShellWord.Of(newest.Path)}");

    private static string? Said(string path, Func<Backup, string> what)
    {
        var houses = BackupPlace.Named(path);
        var lists = $"trimout backups {ShellWord.Of(path)} lists them.";
        string?[] said = houses switch
        {
            [] => [],
            [var one] => [$"{OfWhich(path, one)} there {Of(one)}: {lists} {what(Newest(one))}"],
            _ => [$"The file's name is all there is to go by, and {NumberText.Counted(houses.Count, "house")} of that name have backups. {lists}",
                .. houses.Select(h => $"Of {InWords(h)} there {Of(h)}. {what(Newest(h))}")],
        };
        var all = said.Concat(BackupPlace.MayBeElsewhere).OfType<string>().ToList();
        return all.Count == 0 ? null : string.Join(Environment.NewLine, all);
    }

    private static string OfWhich(string path, HouseBackups house) => HouseOnDisk.HouseOf(path) is not null ? $"Of this house, {InWords(house)}," :
        $"Of a house of that name, {InWords(house)},";

    /// <summary>A house by its name and its number, as its newest backup has them.</summary>
    public static string InWords(HouseBackups house) => NameIn(Newest(house)) is { } name ? $"\"{name}\" ({house.House})" : $"({house.House})";

    private static string Of(HouseBackups house)
    {
        var many = house.Folders.Sum(f => f.All.Count);
        var newest = Newest(house);
        return string.Create(CultureInfo.InvariantCulture, $"{(many == 1 ? "is 1 backup" : $"are {many} backups")}, the newest of ")
            + string.Create(CultureInfo.InvariantCulture, $"{newest.MadeAt.ToLocalTime():yyyy-MM-dd HH:mm} {Holding(newest)}");
    }

    private static string Holding(Backup backup) => BackupFolder.ChangesIn(backup) is { } changes
        ? $"with {NumberText.Counted((int)changes, "change")}" : "which is damaged";

    /// <summary>What was saved last of what can be read, else what was saved last; the folder of today before those of earlier names and places.</summary>
    private static Backup Newest(HouseBackups house)
    {
        var all = house.Folders.SelectMany(f => f.All).ToList();
        return all.FirstOrDefault(b => BackupFolder.ChangesIn(b) is not null) ?? all[0];
    }

    private static string? NameIn(Backup backup)
    {
        try
        {
            return HouseSource.Read(backup.Path, goOn: false, aloud: false).Log.House.Name;
        }
        catch (Exception failed) when (ExitCode.Of(failed) is not null)
        {
            return null;
        }
    }
}

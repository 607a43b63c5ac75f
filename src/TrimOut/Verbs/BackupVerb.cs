using System.CommandLine;
using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Backups;

namespace TrimOut.Verbs;

/// <summary><c>trimout backup</c> and <c>trimout backups</c>: copies of a house.</summary>
internal static class BackupVerb
{
    public static Command Build()
    {
        var path = new Argument<string?>("HOUSE")
        {
            Description = "A .trimout file; goes also while another program has it open.",
            Arity = ArgumentArity.ZeroOrOne
        };
        var to = new Option<string?>("--to") { Description = "The copy to make; a dated one among the house's backups when left out.", HelpName = "file" };
        var place = new Option<string?>("--keep-in") { Description = "From now on keep backups in this folder.", HelpName = "folder" };
        var verb = new Command("backup", "Copy a house as it is now, or say where backups are kept.") { path, to, place, Common.GoOn };
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(place) is { } folder)
            {
                if (Path.Exists(folder) && !Directory.Exists(folder))
                    throw new VerbException(ExitCode.CannotCreate, $"{folder} is there, and is no folder. Backups are kept where they were.");
                KeepIn(Path.GetFullPath(folder));
                Common.Say($"Backups are kept in {Path.GetFullPath(folder)} from now on. Those made before stay where they are.");
            }
            if (parsed.GetValue(path) is not { } house)
                return parsed.GetValue(place) is null ? throw new VerbException(ExitCode.Usage, "Say which house to copy, or where backups go (--keep-in).")
                    : ExitCode.Fine;
            if (parsed.GetValue(to) is { } copy)
            {
                var look = Look.By(parsed);
                look.At(house);
                var file = NewFile.Of(copy, house).OrEnd(ExitCode.Usage);
                BackupFolder.Copy(house, file, TimeProvider.System, parsed.GetValue(Common.GoOn));
                Console.Out.WriteLine(file);
                return look.End(ExitCode.Fine);
            }
            // Among the backups there is nothing that is known to lack something: no --go-on here.
            using var open = HouseOnDisk.OpenToRead(house, TimeProvider.System);
            foreach (var remark in HouseSource.Remarks(open))
                Common.Say(remark);
            if (BackupPlace.NotKnownWhere() is { } doubt)
                Common.Say(doubt);
            if (BackupPlace.CannotBecause() is { } because)
                throw new VerbException(ExitCode.CannotCreate, because);
            BackupPlace.Make();
            if (BackupPlace.Of(open).Keep(open.Where, TimeProvider.System) is { } made)
                Console.Out.WriteLine(made.Path);
            else
                Common.Say("The last backup still holds all.");
            return ExitCode.Fine;
        });
        return verb;
    }

    private static void KeepIn(string folder)
    {
        try
        {
            BackupPlace.KeepIn(folder);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            throw new VerbException(ExitCode.Of(failed)!.Value, $"{failed.Message} Backups are kept where they were.", failed);
        }
    }

    public static Command BuildList()
    {
        var path = Common.House();
        var verb = new Command("backups",
            "List the backups of a house: the file, when it was made, how many changes it holds, and how many of them the house has not. " +
            "Goes also when the house is missing or damaged. Ends with 2 then, and when a backup is damaged.") { path, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var file = parsed.GetRequiredValue(path);
            try
            {
                using var house = HouseSource.Looked(() => HouseOnDisk.OpenToRead(file, TimeProvider.System, parsed.GetValue(Common.GoOn)));
                foreach (var remark in HouseSource.Remarks(house))
                    Common.Say(remark);
                var whole = ListAll([BackupPlace.Of(house), .. BackupPlace.Earlier(house)], HouseLog.Of(house.Opened).OrEnd(ExitCode.BadData));
                foreach (var elsewhere in BackupPlace.MayBeElsewhere)
                    Common.Say(elsewhere);
                return whole && house.LeftOut is null ? ExitCode.Fine : ExitCode.LeftOut;
            }
            catch (Exception failed) when (WayBack.From(failed) is { } way && BackupPlace.Named(Path.GetFullPath(file)) is { Count: > 0 } houses)
            {
                Common.Say($"{failed.Message}{Environment.NewLine}{way}");
                foreach (var house in houses)
                {
                    if (houses.Count > 1)
                        Common.Say($"Of {WayBack.InWords(house)}:");
                    ListAll(house.Folders, null);
                }
                return ExitCode.LeftOut;
            }
        });
        return verb;
    }

    /// <summary>Lists the backups in some folders, and says what is damaged.</summary>
    /// <param name="folders">The folders, that of today first.</param>
    /// <param name="now">The house as it stands; null where that can't be read.</param>
    /// <returns>Whether all could be read.</returns>
    private static bool ListAll(IReadOnlyList<BackupFolder> folders, HouseLog? now)
    {
        var whole = true;
        for (var at = 0; at < folders.Count; at++)
        {
            if (at > 0)
                Common.Say($"Earlier ones, under another name of the house or in another place: {folders[at].Path}");
            foreach (var backup in folders[at].All)
            {
                if (Read(backup) is { } log)
                    Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture,
                        $"{backup.Path}\t{backup.MadeAt.ToLocalTime():yyyy-MM-dd HH:mm}\t{log.Changes.Count}\t") + NotIn(now, log));
                else
                    whole = false;
            }
        }
        return whole;
    }

    private static string NotIn(HouseLog? now, HouseLog backup) =>
        now is null ? "-" : backup.Changes.Count(c => now.Find(c.Id) is null).ToString(CultureInfo.InvariantCulture);

    private static HouseLog? Read(Backup backup)
    {
        try
        {
            return HouseSource.Read(backup.Path, goOn: false).Log;
        }
        catch (Exception failed) when (failed is HouseStoreException or VerbException)
        {
            Common.Say(failed.Message);
            return null;
        }
    }
}

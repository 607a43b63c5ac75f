using System.CommandLine;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Rescues;

namespace TrimOut.Verbs;

/// <summary><c>trimout restore</c>: a house out of a backup, another copy, or a history written as text.</summary>
internal static class RestoreVerb
{
    public static Command Build()
    {
        var path = new Argument<string>("PATH") { Description = "The house file to make, or with --replace the one to put back." };
        var from = new Argument<string>("FROM") { Description = "A backup, another copy, a history as JSON Lines, or - for such a history on standard input." };
        var replace = new Option<bool>("--replace")
        {
            Description = "Put it in the place of the house that is there, which is backed up first, or kept beside it where it is damaged."
        };
        var other = new Option<bool>("--other-house") { Description = "With --replace: also when FROM is of another house." };
        var verb = new Command("restore",
            "Make a house file of a backup or of a history as text. Where there is one already, only the difference is shown.") { path, from, replace,
                other, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var file = NewFile.Of(parsed.GetRequiredValue(path)).OrEnd(ExitCode.Usage);
            var source = parsed.GetRequiredValue(from);
            var look = Look.By(parsed);
            var isFile = source == Common.WithEnding(source) && !Directory.Exists(source);
            var log = isFile || Directory.Exists(source) ? look.At(source) : look.AtText(source);
            var (goAhead, anyHouse) = (parsed.GetValue(replace), parsed.GetValue(other));
            if (goAhead && !HouseOnDisk.IsFree(file) && !IsSound(file))
                return look.End(ReplaceDamaged(file, source, log, anyHouse, isFile ? HouseOnDisk.HouseOf(source) : null));
            if (File.Exists(file))
                return look.End(Replace(file, source, log, goAhead, anyHouse));
            using var house = HouseOnDisk.Create(file, TimeProvider.System, log.Changes, KeptPlace.NotBrief(), isFile ? HouseOnDisk.HouseOf(source) : null);
            house.KeepAtClosing(() => log);
            Common.Say($"Made {house.Where} with {NumberText.Counted(log.Changes.Count, "change")}.");
            return look.End(HouseSource.Tell(log) == 0 ? ExitCode.Fine : ExitCode.LeftOut);
        });
        return verb;
    }

    private static bool IsSound(string file)
    {
        try
        {
            HouseOnDisk.OpenToRead(file, TimeProvider.System).Dispose();
            return true;
        }
        catch (HouseStoreException failed) when (failed.Fault is StoreFault.Damaged or StoreFault.Foreign or StoreFault.NotThere)
        {
            return false;
        }
    }

    private static int Replace(string file, string source, HouseLog log, bool goAhead, bool anyHouse)
    {
        var (house, scribe) = HouseSource.Open(file, LoginName.Now);
        using (house)
        {
            CompareVerb.Write(Difference.Between(scribe.Log, log), file, source, Console.Out);
            if (!goAhead)
                throw new VerbException(ExitCode.CannotCreate,
                    $"{file} is there already, and was left as it is. This is how they differ; to put {source} in its place: --replace. To take in " +
                        $"what it has more: trimout merge {ShellWord.Of(file)} {ShellWord.Of(source)}");
            if (!anyHouse)
                RequireSame(file, source, scribe.Log.Changes, log);
            // Without a backup of what is there now, nothing is replaced.
            if (BackupPlace.Keep(house) is { } failed)
                throw new VerbException(ExitCode.Disk, $"{failed} {file} was left as it is.");
            house.Replace(log.Changes);
            Common.Say($"{file} now holds {source}. What it held before is among its backups: trimout backups {ShellWord.Of(file)}");
            return ExitCode.Fine;
        }
    }

    /// <summary>Where what is there is damaged it can't be backed up: it is kept as it is, under another name.</summary>
    private static int ReplaceDamaged(string file, string source, HouseLog log, bool anyHouse, string? sharing)
    {
        if (!anyHouse && Rescue.Read(file).Changes is var there)
        {
            if (there.IsEmpty)
                RequireNotKnownToBeAnother(file, source, sharing);
            else
                RequireSame(file, source, there, log);
        }
        var (house, aside) = HouseOnDisk.CreateInstead(file, TimeProvider.System, log.Changes, KeptPlace.NotBrief(), sharing);
        using (house)
            house.KeepAtClosing(() => log);
        Common.Say($"{file} now holds {source}: {NumberText.Counted(log.Changes.Count, "change")}. What was there, which is damaged, is kept as it "
            + $"was: {aside}. To bring out what is sound in it: trimout rescue {ShellWord.Of(aside)} NEW.trimout");
        HouseSource.Tell(log);
        // What was saved since then is in what was kept, and only there.
        return ExitCode.LeftOut;
    }

    /// <summary>Where nothing can be read of what is there: its last page or journal, or the backups that have its name, may say whose it was.</summary>
    private static void RequireNotKnownToBeAnother(string file, string source, string? sharing)
    {
        var houses = BackupPlace.Named(Path.GetFullPath(file));
        var known = HouseOnDisk.HouseOf(file) is { } one ? [one] : houses.Select(h => h.House).ToList();
        if (known.Count > 0 && (sharing is null || !known.Contains(sharing)))
            throw new VerbException(ExitCode.CannotCreate,
                $"Nothing shows that {source} is of the house that {file} was: there is no change in it that can be read, and it or the backups that have its "
                + $"name say that it is of {string.Join(" or ", houses.Count > 0 ? houses.Select(WayBack.InWords) : known)}. It was left as it is. To put "
                + $"{source} in its place all the same: --replace --other-house");
        if (known.Count > 1)
            Common.Say($"{file} says no more which house it was. Backups of that name are of {string.Join(" and of ", houses.Select(WayBack.InWords))}: "
                + "look whether this is the right one.");
    }

    private static void RequireSame(string file, string source, IReadOnlyList<Change> there, HouseLog log)
    {
        if (there.Count > 0 && !there.Any(c => log.Find(c.Id) is not null))
            throw new VerbException(ExitCode.CannotCreate,
                $"{source} is of another house: it has no change in common with {file}, which was left as it is. To put it in its place all the same: "
                + "--replace --other-house");
    }
}

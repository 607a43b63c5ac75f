using System.CommandLine;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile;

namespace TrimOut.Verbs;

/// <summary><c>trimout restore</c>: a house out of a backup, another copy, or a history written as text.</summary>
internal static class RestoreVerb
{
    public static Command Build()
    {
        var path = new Argument<string>("PATH") { Description = "The house file to make, or with --replace the one to put back." };
        var from = new Argument<string>("FROM") { Description = "A backup, another copy, a history as JSON Lines, or - for such a history on standard input." };
        var replace = new Option<bool>("--replace") { Description = "Put it in the place of the house that is there, which is backed up first." };
        var verb = new Command("restore",
            "Make a house file of a backup or of a history as text. Where there is one already, only the difference is shown.") { path, from, replace,
                Common.GoOn };
        verb.SetAction(parsed =>
        {
            var file = Common.WithEnding(parsed.GetRequiredValue(path));
            var source = parsed.GetRequiredValue(from);
            var look = Look.By(parsed);
            var log = Directory.Exists(source) || source == Common.WithEnding(source) ? look.At(source) : HouseSource.ReadText(source);
            if (File.Exists(file))
                return look.End(Replace(file, source, log, parsed.GetValue(replace)));
            using var house = HouseOnDisk.Create(file, TimeProvider.System, log.Changes, KeptPlace.NotBrief());
            house.KeepAtClosing(() => log);
            Common.Say($"Made {house.Where} with {NumberText.Counted(log.Changes.Count, "change")}.");
            return look.End(HouseSource.Tell(log) == 0 ? ExitCode.Fine : ExitCode.LeftOut);
        });
        return verb;
    }

    private static int Replace(string file, string source, HouseLog log, bool goAhead)
    {
        var (house, scribe) = HouseSource.Open(file, Environment.UserName);
        using (house)
        {
            CompareVerb.Write(Difference.Between(scribe.Log, log), file, source, Console.Out);
            if (!goAhead)
                throw new VerbException(ExitCode.CannotCreate,
                    $"{file} is there already, and was left as it is. This is how they differ; to put {source} in its place: --replace. To take in " +
                        $"what it has more: trimout merge {file} {source}");
            // Without a backup of what is there now, nothing is replaced.
            if (BackupPlace.Keep(house) is { } failed)
                throw new VerbException(ExitCode.Disk, $"{failed} {file} was left as it is.");
            house.Replace(log.Changes);
            Common.Say($"{file} now holds {source}. What it held before is among its backups: trimout backups {file}");
            return ExitCode.Fine;
        }
    }
}

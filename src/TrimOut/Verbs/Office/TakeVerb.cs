using System.CommandLine;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.Office;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office take</c>: a house file of a house that is at the office and not on this machine.</summary>
internal static class TakeVerb
{
    public static Command Build()
    {
        var number = new Argument<int>("NUMBER") { Description = "The house's number, as trimout office houses lists it." };
        var path = new Argument<string>("PATH") { Description = "The house file to make." };
        var verb = new Command("take", "Make a house file of a house that is at the office.") { number, path, OfficeVerb.CredentialsOption };
        verb.SetAction(parsed =>
        {
            var office = OfficeVerb.By(parsed);
            var file = NewFile.Of(parsed.GetRequiredValue(path)).OrEnd(ExitCode.Usage);
            if (!HouseOnDisk.IsFree(file))
                throw new VerbException(ExitCode.CannotCreate, $"{file} is there already, and was left as it is.");
            var (log, mark) = OfficeVerb.With(office, connection => Exchange.First(connection, parsed.GetRequiredValue(number), TimeProvider.System, _ => { },
                CancellationToken.None));
            using var house = HouseOnDisk.Create(file, TimeProvider.System, log.Changes, KeptPlace.NotBrief());
            house.KeepAtClosing(() => log);
            OfficePlace.Keep(office, log, mark);
            Common.Say($"Made {house.Where} with {NumberText.Counted(log.Changes.Count, "change")}.");
            return HouseSource.Tell(log) == 0 ? ExitCode.Fine : ExitCode.LeftOut;
        });
        return verb;
    }
}

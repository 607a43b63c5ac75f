using System.CommandLine;
using System.Globalization;
using TrimOut.Desks;
using TrimOut.HouseFile.Files;
using TrimOut.Office;
using TrimOut.Office.Running;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office trial</c>: a server of one's own on this machine's loopback, with the sample houses in it.</summary>
internal static class TrialVerb
{
    private const int UsualPort = 54330;

    public static Command Build()
    {
        var folder = new Argument<string>("FOLDER") { Description = "A new folder for the server and the credentials files." };
        var port = new Option<int>("--port") { Description = "The port that it listens at, on this machine alone.", DefaultValueFactory = _ => UsualPort };
        var stop = new Option<bool>("--stop") { Description = "Stop the server that lies in the folder." };
        var start = new Option<bool>("--start") { Description = "Start the server that lies in the folder again." };
        var verb = new Command("trial", "Make an office to try things with: a PostgreSQL server on this machine alone, with its tables, three devices and the "
            + "sample houses. Needs PostgreSQL 15 or later (Debian: apt install postgresql).") { folder, port, stop, start };
        verb.SetAction(parsed =>
        {
            var place = Path.GetFullPath(parsed.GetRequiredValue(folder));
            if (Path.Exists(place) && !Directory.Exists(place))
                throw new VerbException(ExitCode.CannotCreate, $"{place} is {PlainFile.NameOf(place) ?? "a file"}, not a folder. Name a new one.");
            if (parsed.GetValue(stop) || parsed.GetValue(start))
            {
                if (parsed.GetValue(stop))
                    TrialServer.At(place).Stop();
                else
                    TrialServer.At(place).Start();
                return ExitCode.Fine;
            }
            var (_, owner, administrator) = OfficeVerb.Waited(() => TrialServer.Make(place, parsed.GetValue(port), TimeProvider.System));
            Write(place, "administrator", administrator);
            Write(place, "owner", owner);
            OfficeVerb.Waited(() => Migrations.Apply(owner, _ => { }, CancellationToken.None));
            foreach (var (device, part) in new[] { ("desk", "office"), ("van", "crew"), ("client", "reader") })
                Write(place, device, OfficeVerb.Waited(() => Devices.Enroll(owner, device, part, CancellationToken.None)));
            var van = OfficePlace.Credentials(In(place, "van"));
            foreach (var sample in SampleJobs.Folders)
            {
                var log = HouseSource.Read(sample, goOn: false, aloud: false).Log;
                var done = ExchangeVerb.Run(van, log, sends: true);
                Common.Say(string.Create(CultureInfo.InvariantCulture,
                    $"{done.Sent} changes of {Path.GetFileName(sample)} went to it, as house {done.Mark.House}."));
            }
            Common.Say(string.Create(CultureInfo.InvariantCulture,
                $"The trial office answers at {TrialServer.Host}:{parsed.GetValue(port)}, on this machine alone."));
            Common.Say($"To look at it: trimout office houses --credentials {ShellWord.Of(In(place, "desk"))}");
            Common.Say($"To stop it: trimout office trial --stop {ShellWord.Of(place)}");
            return ExitCode.Fine;
        });
        return verb;
    }

    private static string In(string place, string device) => Path.Combine(place, $"{device}.credentials");

    private static void Write(string place, string device, Credentials credentials) => OfficePlace.Write(In(place, device), credentials);
}

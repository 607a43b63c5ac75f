using System.CommandLine;
using TrimOut.Desks;
using TrimOut.Office.Running;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office enroll</c> and <c>shut-out</c>: which devices may connect at all. For the owner of the office's tables.</summary>
internal static class DeviceVerbs
{
    public static Command BuildEnroll()
    {
        var device = new Argument<string>("DEVICE") { Description = "What it is called: lower-case letters, digits and hyphens." };
        var file = new Argument<string>("FILE") { Description = "The credentials file to make; it goes to that device alone." };
        var part = new Option<string>("--as")
        {
            Description = "What it may do at the most: crew (the houses that it is let into or brings), reader (only look at those), office (all houses).",
            HelpName = "crew|reader|office",
            DefaultValueFactory = _ => "crew",
        };
        part.AcceptOnlyFromAmong([.. Devices.Parts]);
        var verb = new Command("enroll", "Enroll a device at the office, or give one a new secret; the old one counts no more.")
        {
            device, file, part, OfficeVerb.CredentialsOption
        };
        verb.SetAction(parsed =>
        {
            var to = Path.GetFullPath(parsed.GetRequiredValue(file));
            if (Path.Exists(to))
                throw new VerbException(ExitCode.CannotCreate, $"{to} is there already, and was left as it is.");
            var made = OfficeVerb.Waited(() => Devices.Enroll(OfficeVerb.By(parsed), parsed.GetRequiredValue(device), parsed.GetValue(part)!,
                CancellationToken.None));
            OfficePlace.Write(to, made);
            Common.Say($"{made.Device} is enrolled. {to} holds its secret: put it on that device as office.credentials in the TrimOut folder, and "
                + "keep no copy.");
            return ExitCode.Fine;
        });
        return verb;
    }

    public static Command BuildShutOut()
    {
        var device = new Argument<string>("DEVICE") { Description = "The device, by the name that it was enrolled under." };
        var verb = new Command("shut-out", "Shut a device out of the office at once, as when a laptop is lost. What it sent before stays.")
        {
            device, OfficeVerb.CredentialsOption
        };
        verb.SetAction(parsed =>
        {
            OfficeVerb.Waited(async () =>
            {
                await Devices.ShutOut(OfficeVerb.By(parsed), parsed.GetRequiredValue(device), CancellationToken.None).ConfigureAwait(false);
                return true;
            });
            Common.Say($"{parsed.GetRequiredValue(device)} is shut out. What lies on it, it still has.");
            return ExitCode.Fine;
        });
        return verb;
    }
}

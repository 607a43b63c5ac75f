using System.CommandLine;
using TrimOut.Office.Running;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office let-in</c>: what a device may do in a house.</summary>
internal static class LetInVerb
{
    private const string Nothing = "nothing";

    public static Command Build()
    {
        var number = new Argument<int>("NUMBER") { Description = "The house's number, as trimout office houses lists it." };
        var device = new Argument<string>("DEVICE") { Description = "The device, by the name that it was enrolled under." };
        var part = new Option<string>("--as")
        {
            Description = "What it may do in that house: crew (send and fetch), reader (only fetch), office (also let others in), or nothing any more.",
            HelpName = "crew|reader|office|nothing",
            DefaultValueFactory = _ => "crew",
        };
        part.AcceptOnlyFromAmong([.. Devices.Parts, Nothing]);
        var verb = new Command("let-in", "Say what a device may do in a house; only the office may.") { number, device, part, OfficeVerb.CredentialsOption };
        verb.SetAction(parsed =>
        {
            var (house, who, what) = (parsed.GetRequiredValue(number), parsed.GetRequiredValue(device), parsed.GetValue(part)!);
            OfficeVerb.With(OfficeVerb.By(parsed), office => office.LetIn(house, who, what == Nothing ? null : what, CancellationToken.None));
            Common.Say(what == Nothing ? $"{who} is out of house {house}." : $"{who} is in house {house} as {what}.");
            return ExitCode.Fine;
        });
        return verb;
    }
}

using System.CommandLine;
using TrimOut.Desks;
using TrimOut.Office;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office status</c>: when a house was last exchanged, and how many changes are not yet at the office. Asks no network.</summary>
internal static class StatusVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var verb = new Command("status",
            "Say when a house was last exchanged, how many changes are not yet at the office, and how many came from it then and were put off, as far as this "
                + "machine knows: nothing is asked of the network. Ends with 1 while some are not yet at the office.")
        { path, OfficeVerb.CredentialsOption, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var (office, look) = (OfficeVerb.Named(parsed), Look.By(parsed));
            var log = look.At(parsed.GetRequiredValue(path));
            var status = ExchangeStatus.Of(OfficePlace.MarkOf(office, log), log);
            Console.Out.WriteLine(status.InWords);
            return look.End(status.NotYetThere.Count == 0 ? ExitCode.Fine : ExitCode.OpenStops);
        });
        return verb;
    }
}

using System.CommandLine;
using System.Globalization;
using TrimOut.Core;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office houses</c>: the houses at the office that this device may see.</summary>
internal static class HousesVerb
{
    public static Command Build()
    {
        var verb = new Command("houses", "List the houses at the office that this device may see: number, how many changes, what it may do there, the change "
            + "that began it, its name (empty while the office's lists do not have it), with tabs between.") { OfficeVerb.CredentialsOption };
        verb.SetAction(parsed =>
        {
            foreach (var house in OfficeVerb.With(OfficeVerb.By(parsed), office => office.Houses(CancellationToken.None)))
                Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"{house.House}\t{house.Last}\t{house.Part}\t{house.Begun}\t{ShownText.Line(house.Name ?? "")}"));
            return ExitCode.Fine;
        });
        return verb;
    }
}

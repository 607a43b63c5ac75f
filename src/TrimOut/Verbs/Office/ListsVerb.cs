using System.CommandLine;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Office;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office lists</c>: works out the lists of houses whose lists are behind their history.</summary>
internal static class ListsVerb
{
    public static Command Build()
    {
        var verb = new Command("lists", "Work out the office's lists of each house whose lists are behind, and name it.") { OfficeVerb.CredentialsOption };
        verb.SetAction(parsed =>
        {
            OfficeVerb.With(OfficeVerb.By(parsed), async office =>
            {
                await Exchange.CatchUp(office, (house, name) =>
                    Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{house}\t{ShownText.Line(name)}")),
                    CancellationToken.None).ConfigureAwait(false);
                return true;
            });
            return ExitCode.Fine;
        });
        return verb;
    }
}

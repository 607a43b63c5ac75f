using System.CommandLine;
using System.Globalization;
using TrimOut.Office.Running;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office set-up</c>: the tables of the office, made or brought up to date.</summary>
internal static class SetUpVerb
{
    public static Command Build()
    {
        var verb = new Command("set-up",
            "Make the office's tables, or bring those of an earlier version up to date. For their owner, whose credentials are named.")
        {
            OfficeVerb.CredentialsOption
        };
        verb.SetAction(parsed =>
        {
            var done = OfficeVerb.Waited(() => Migrations.Apply(OfficeVerb.By(parsed), name => Console.Out.WriteLine(name), CancellationToken.None));
            Common.Say(done == 0 ? string.Create(CultureInfo.InvariantCulture, $"The tables are of version {Migrations.All.Length} already.")
                : string.Create(CultureInfo.InvariantCulture, $"The tables are of version {Migrations.All.Length} now."));
            return ExitCode.Fine;
        });
        return verb;
    }
}

using System.CommandLine;
using System.Globalization;
using TrimOut.HouseFile;

namespace TrimOut.Verbs;

/// <summary><c>trimout restore</c>: makes a house file of a history written as text.</summary>
internal static class RestoreVerb
{
    public static Command Build()
    {
        var path = new Argument<string>("PATH") { Description = "The house file to make; nothing may be there yet." };
        var text = new Argument<string>("HISTORY") { Description = "The history as JSON Lines; - reads standard input." };
        var verb = new Command("restore", "Make a house file of a history written by the history command.") { path, text };
        verb.SetAction(parsed =>
        {
            var log = HouseSource.ReadText(parsed.GetRequiredValue(text));
            using var house = HouseOnDisk.Create(Common.WithEnding(parsed.GetRequiredValue(path)), TimeProvider.System, log.Changes);
            Common.Say(string.Create(CultureInfo.InvariantCulture, $"Made {house.Where} with {log.Changes.Count} changes."));
            return ExitCode.Fine;
        });
        return verb;
    }
}

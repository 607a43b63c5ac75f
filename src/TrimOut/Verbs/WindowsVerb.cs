using System.CommandLine;
using TrimOut.HouseFile.Schedules;

namespace TrimOut.Verbs;

/// <summary><c>trimout windows</c>: the windows as CSV.</summary>
internal static class WindowsVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var verb = new Command("windows", "Write the windows to standard output as CSV, which the import command reads.") { path };
        verb.SetAction(parsed =>
        {
            Console.Out.Write(WindowTable.Write(HouseSource.Read(parsed.GetRequiredValue(path)).House));
            return ExitCode.Fine;
        });
        return verb;
    }
}

using System.CommandLine;
using TrimOut.HouseFile.Schedules;

namespace TrimOut.Verbs;

/// <summary><c>trimout windows</c>: the windows as CSV.</summary>
internal static class WindowsVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var verb = new Command("windows", "Write the windows to standard output as CSV, which the import command reads.") { path, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var house = look.At(parsed.GetRequiredValue(path)).House;
            Console.Out.Write(WindowTable.Write(house));
            if (WindowTable.WithMoreUnits(house) is { Count: > 0 } wide)
                Common.Say($"These windows have several units, and the table has the first of each: {string.Join(", ", wide.Select(w => w.Tag))}.");
            return look.End(ExitCode.Fine);
        });
        return verb;
    }
}

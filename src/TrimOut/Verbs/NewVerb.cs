using System.CommandLine;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile;

namespace TrimOut.Verbs;

/// <summary><c>trimout new</c>: begins a house file.</summary>
internal static class NewVerb
{
    public static Command Build()
    {
        var path = new Argument<string>("PATH") { Description = "Where; .trimout is added when it is missing." };
        var name = new Option<string?>("--name") { Description = "What everybody calls this job; the file's name when left out." };
        var units = new Option<string>("--units")
        {
            Description = "What lengths are shown in, and what a bare number means.",
            DefaultValueFactory = _ =>
            "inches"
        };
        units.AcceptOnlyFromAmong("inches", "mm");
        var by = Common.By();
        var verb = new Command("new", "Begin a house file with the generic kit.") { path, name, units, by };
        verb.SetAction(parsed =>
        {
            var file = Common.WithEnding(parsed.GetRequiredValue(path));
            var called = parsed.GetValue(name) ?? Path.GetFileNameWithoutExtension(file);
            var begin = NewHouse.Begin(called, parsed.GetValue(units) == "mm" ? DisplayUnits.Millimetres : DisplayUnits.Inches).OrEnd(ExitCode.Usage);
            using var house = HouseOnDisk.Create(file, TimeProvider.System);
            new Scribe(house, TimeProvider.System, parsed.GetValue(by)!).Record(begin).OrEnd(ExitCode.Disk);
            Common.Say($"Began {house.Where}.");
            return ExitCode.Fine;
        });
        return verb;
    }
}

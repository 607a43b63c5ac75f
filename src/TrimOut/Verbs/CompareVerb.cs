using System.CommandLine;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Core.Units;

namespace TrimOut.Verbs;

/// <summary><c>trimout compare</c>: how two copies of a house differ.</summary>
internal static class CompareVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var other = new Argument<string>("OTHER") { Description = "Another copy or a backup." };
        var verb = new Command("compare",
            "Show how two copies of a house differ: changes that only one has, and values. Ends with 1 when they do.") { path, other, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var difference = Difference.Between(look.At(parsed.GetRequiredValue(path)), look.At(parsed.GetRequiredValue(other)));
            Write(difference, parsed.GetRequiredValue(path), parsed.GetRequiredValue(other), Console.Out);
            return look.End(difference.OnlyHere.IsEmpty && difference.OnlyThere.IsEmpty ? ExitCode.Fine : ExitCode.OpenStops);
        });
        return verb;
    }

    /// <summary>Writes a difference for reading.</summary>
    internal static void Write(Difference difference, string here, string there, TextWriter to)
    {
        Changes(difference.OnlyHere, here);
        Changes(difference.OnlyThere, there);
        foreach (var (what, one, two) in difference.Values)
            to.WriteLine(ShownText.Line($"{what}: {one} here, {two} there"));

        void Changes(IReadOnlyList<Change> changes, string where)
        {
            to.WriteLine($"Only in {where}: {NumberText.Counted(changes.Count, "change")}");
            foreach (var change in changes)
                to.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"  {change.SaidAt:yyyy-MM-dd HH:mm} {ShownText.Line(change.By)}: {ShownText.Line(change.What)}"));
        }
    }
}

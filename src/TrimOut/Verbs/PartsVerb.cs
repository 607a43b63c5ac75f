using System.CommandLine;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Parts;

namespace TrimOut.Verbs;

/// <summary><c>trimout parts</c>: everything that a house takes, and what each line was counted from.</summary>
internal static class PartsVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var verb = new Command("parts",
            "List everything that a house takes, a line each: group, part, how many, unit and what it was counted from, with tabs between. A line " +
                "that can't be counted yet has no number, or says \"at least\" before it, and what is missing.") { path, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var house = look.At(parsed.GetRequiredValue(path)).House;
            foreach (var line in HouseParts.Of(house))
                Console.Out.WriteLine(string.Join('\t', KebabCase.Of(line.Group), line.Part.In(house), line.Shown, line.Unit, line.CountedFrom.In(house)));
            return look.End(ExitCode.Fine);
        });
        return verb;
    }
}

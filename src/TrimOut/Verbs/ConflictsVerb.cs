using System.CommandLine;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;

namespace TrimOut.Verbs;

/// <summary><c>trimout conflicts</c>: what two copies disagree about, and choosing.</summary>
internal static class ConflictsVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var choose = new Option<string[]>("--choose")
        {
            Description = "The name that stands before a detail, and a letter, such as 3f9c2-b; may be given several times.",
            HelpName = "choice"
        };
        var by = Common.By();
        var verb = new Command("conflicts",
            "List what two copies of the house disagree about, and choose. Ends with 1 when something is left.") { path, choose, by, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var house = parsed.GetRequiredValue(path);
            if (parsed.GetValue(choose) is { Length: > 0 } choices)
                return Choose(house, choices, parsed.GetValue(by)!);
            var look = Look.By(parsed);
            return look.End(List(look.At(house).House));
        });
        return verb;
    }

    /// <summary>What two copies disagree about, and the ways out, without its name.</summary>
    internal static string Line(Conflict conflict) =>
        $"{conflict.About} {string.Join(", ", conflict.Ways.Select((w, at) => $"{Letter(at)}) {w.Says}"))}.";

    private static int List(House house)
    {
        var all = Conflict.All(house).ToList();
        foreach (var conflict in all)
            Console.Out.WriteLine($"{conflict.Id}\t{ShownText.Line(Line(conflict))}");
        return all.Count == 0 ? ExitCode.Fine : ExitCode.OpenStops;
    }

    private static int Choose(string path, string[] choices, string by)
    {
        var (file, scribe) = HouseSource.Open(path, by);
        using (file)
        {
            var all = Conflict.All(scribe.House).ToList();
            var chosen = choices.Select(c => Read(c, all)).ToList();
            if (chosen.GroupBy(c => c.Of.Id).FirstOrDefault(g => g.Select(c => c.At).Distinct().Skip(1).Any()) is { } both)
                throw new VerbException(ExitCode.Usage, $"Two ways are chosen for one detail, so nothing was settled: {Line(both.First().Of)}");
            foreach (var (conflict, at) in chosen.Distinct())
            {
                var way = conflict.Ways[at];
                var settled = way.Draft.Then(scribe.Record).OrEnd(ExitCode.Disk).What;
                Common.Say($"Settled {conflict.Id}: {conflict.About} {way.Says}. {settled}.");
            }
            return List(scribe.House);
        }
    }

    private static (Conflict Of, int At) Read(string choice, List<Conflict> all)
    {
        // No bare numbers: they would mean another detail once one of the list is settled.
        var text = choice.Trim().ToLowerInvariant().Split('-');
        if (text is not [var name, [var letter]])
            throw new VerbException(ExitCode.Usage, $"\"{choice}\" is no choice. Write the name that stands before a detail, and a letter, such as 3f9c2-b.");
        if (all.Where(c => c.Id == name).ToList() is not [var conflict])
        {
            throw new VerbException(ExitCode.Usage,
                $"\"{choice}\": no detail that is open is named {name}. It was settled, or changed since it was listed: list them again.");
        }
        return letter - 'a' is >= 0 and var at && at < conflict.Ways.Length ? (conflict, at)
            : throw new VerbException(ExitCode.Usage, $"\"{choice}\" is no choice. There are: {Line(conflict)}");
    }

    private static char Letter(int at) => (char)('a' + at);
}

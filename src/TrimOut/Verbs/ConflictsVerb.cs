using System.CommandLine;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
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
            Description = "A line's number and a letter, such as 1b; may be given several times.",
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

    /// <summary>What two copies disagree about, and the ways out, without a number.</summary>
    internal static string Line(Conflict conflict) =>
        $"{conflict.About} {string.Join(", ", conflict.Ways.Select((w, at) => $"{Letter(at)}) {w.Says}"))}.";

    private static int List(House house)
    {
        var all = Conflict.All(house).ToList();
        for (var at = 0; at < all.Count; at++)
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{at + 1}\t{ShownText.Line(Line(all[at]))}"));
        return all.Count == 0 ? ExitCode.Fine : ExitCode.OpenStops;
    }

    private static int Choose(string path, string[] choices, string by)
    {
        var (file, scribe) = HouseSource.Open(path, by);
        using (file)
        {
            var all = Conflict.All(scribe.House).ToList();
            foreach (var way in choices.Select(c => Read(c, all)).ToList())
                Common.Say($"{way.Then(scribe.Record).OrEnd(ExitCode.Disk).What}.");
            return List(scribe.House);
        }
    }

    private static Result<Draft> Read(string choice, List<Conflict> all)
    {
        var text = choice.Trim().ToLowerInvariant();
        if (text.Length > 1 && int.TryParse(text.AsSpan(0, text.Length - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1
            && number <= all.Count
            && text[^1] - 'a' is >= 0 and var at && at < all[number - 1].Ways.Length)
            return all[number - 1].Ways[at].Draft;
        throw new VerbException(ExitCode.Usage, $"\"{choice}\" is no choice. Write a line's number and a letter as they are listed, such as 1b.");
    }

    private static char Letter(int at) => (char)('a' + at);
}

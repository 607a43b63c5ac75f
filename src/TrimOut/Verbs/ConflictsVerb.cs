using System.CommandLine;
using System.Globalization;
using TrimOut.Core.Decisions;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Verbs;

/// <summary><c>trimout conflicts</c>: facts on which two copies disagree, and choosing between their values.</summary>
internal static class ConflictsVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var choose = new Option<string[]>("--choose") { Description = "A fact's number and a value's letter, such as 1b; may be given several times.", HelpName = "choice" };
        var by = Common.By();
        var verb = new Command("conflicts", "List facts on which two copies of the house disagree, and choose. Ends with 1 when some are left.") { path, choose, by };
        verb.SetAction(parsed =>
        {
            var house = parsed.GetRequiredValue(path);
            if (parsed.GetValue(choose) is { Length: > 0 } choices)
                return Choose(house, choices, parsed.GetValue(by)!);
            return List(HouseSource.Read(house).House);
        });
        return verb;
    }

    /// <summary>One fact and its values, without a number.</summary>
    internal static string Line(Disagreement disagreement, House house) =>
        $"{house.NameOf(disagreement.Item)}: {disagreement.Fact.Label}: {string.Join(", ", disagreement.Heads.Select((h, at) => $"{Letter(at)}) {disagreement.Show(h, house)}"))}.";

    private static int List(House house)
    {
        var all = Disagreement.All(house).ToList();
        for (var at = 0; at < all.Count; at++)
            Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{at + 1}\t{Line(all[at], house)}"));
        return all.Count == 0 ? ExitCode.Fine : ExitCode.OpenStops;
    }

    private static int Choose(string path, string[] choices, string by)
    {
        var (file, scribe) = HouseSource.Open(path, by);
        using (file)
        {
            var all = Disagreement.All(scribe.House).ToList();
            var chosen = choices.Select(c => Read(c, all)).ToList();
            foreach (var (disagreement, head) in chosen)
                Common.Say($"{ChooseValue.Of(scribe.House, disagreement, head).Then(scribe.Record).OrEnd(ExitCode.Disk).What}.");
            return List(scribe.House);
        }
    }

    private static (Disagreement Disagreement, Head Head) Read(string choice, List<Disagreement> all)
    {
        var text = choice.Trim().ToLowerInvariant();
        if (text.Length > 1 && int.TryParse(text.AsSpan(0, text.Length - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= all.Count
            && text[^1] - 'a' is >= 0 and var at && at < all[number - 1].Heads.Length)
            return (all[number - 1], all[number - 1].Heads[at]);
        throw new VerbException(ExitCode.Usage, $"\"{choice}\" is no choice. Write a fact's number and a value's letter as they are listed, such as 1b.");
    }

    private static char Letter(int at) => (char)('a' + at);
}

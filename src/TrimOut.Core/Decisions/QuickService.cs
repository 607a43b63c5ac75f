using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>One line that records what was done in service.</summary>
public static class QuickService
{
    private const string SerialWord = "serial ";
    private const string ClaimWord = "claim ";

    /// <summary>What was done in words and as they are stored, the longest first: "motor replaced" is not "replaced" of a thing called motor.</summary>
    private static readonly (string Words, ServiceKind Kind)[] Kinds = [.. Enum.GetValues<ServiceKind>()
        .Select(k => (KebabCase.Of(k).Replace('-', ' '), k)).OrderByDescending(k => k.Item1.Length)];

    /// <summary>
    /// What it was done to and what was done, the day where it was not today, and behind @ who did it; then behind commas the serial that hangs there now,
    /// the warranty claim, what became of it, and the cause: <c>W03 replaced 2027-03-02 @Ash, serial R-2291, claim C-17, motor grinds</c>. A yearly visit is
    /// of the house.
    /// </summary>
    /// <param name="house">The house.</param>
    /// <param name="line">What was typed.</param>
    /// <param name="today">Which day it is, for a line that says none; null where that is not known.</param>
    public static Result<Draft> Read(House house, string line, DateOnly? today = null)
    {
        var parts = line.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 0)
            return new Refusal($"Type what it was done to and what was done: {ServiceFacts.Kind.Hint}.");
        var at = parts[0].IndexOf(QuickPeople.BeforeWho, StringComparison.Ordinal);
        // What stands before @Kitchen is a room, which is never in service: an @ at the beginning is of nobody.
        var (head, who) = at > 0 ? (parts[0][..at].Trim(), parts[0][(at + 1)..].Trim()) : (parts[0], "");
        if (KindIn(head) is not var (before, kind, after))
            return new Refusal($"Say what was done: {ServiceFacts.Kind.Hint}.");
        return DayOf(house, after, today)
            .Then<DateOnly>(day => RecordService.RefuseDay(house, day, today) is { } early ? early : day)
            .Then(day => About(house, before).Then(about =>
                Said(house, new ServiceSaid(kind, day), who, parts[1..]).Then(said => RecordService.Of(house, about, said))));
    }

    /// <summary>What a line calls something: its name, or its sort and its name where the name alone means something else too.</summary>
    /// <param name="house">The house.</param>
    /// <param name="about">A unit, a panel, a hub or a remote.</param>
    public static string Called(House house, Item about) => Named(house, house.NameOf(about)) is { Ok: true } named && named.Value.Id == about.Id
        ? house.NameOf(about) : $"{ItemsNamed.Word(about.Kind)} {house.NameOf(about)}";

    private static (string Before, ServiceKind Kind, string After)? KindIn(string head)
    {
        var words = $" {head.Replace("-replaced", " replaced", StringComparison.OrdinalIgnoreCase)
            .Replace("-changed", " changed", StringComparison.OrdinalIgnoreCase).Replace("yearly-visit", "yearly visit", StringComparison.OrdinalIgnoreCase)} ";
        foreach (var (name, kind) in Kinds)
        {
            if (words.IndexOf($" {name} ", StringComparison.OrdinalIgnoreCase) is >= 0 and var found)
                return (words[..found].Trim(), kind, words[(found + name.Length + 2)..].Trim());
        }
        return null;
    }

    private static Result<DateOnly> DayOf(House house, string typed, DateOnly? today) => typed.Length == 0
        ? today is { } now ? now : new Refusal("Say the day on which it was done, such as 2027-03-02.")
        : ServiceFacts.On.ReadTyped(typed, house, today).Then(stored => ServiceFacts.On.DecodeAny(stored).Then<DateOnly>(d => (DateOnly)d));

    /// <summary>
    /// What it was done to. A line may begin with it before anybody types: said twice it is meant once, and another name behind it is asked about.
    /// </summary>
    private static Result<Item> About(House house, string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var at = 1; at < words.Length && !Named(house, typed).Ok; at++)
        {
            var (one, other) = (string.Join(' ', words[..at]), string.Join(' ', words[at..]));
            if (SameName.Comparer.Equals(one, other))
                return Named(house, one);
            if (Named(house, one) is { Ok: true } first && Named(house, other) is { Ok: true } second)
                return first.Value.Id == second.Value.Id ? second : new Refusal($"{one} and {other} both stand there: write the one that it was done to.");
        }
        return Named(house, typed);
    }

    private static Result<Item> Named(House house, string name)
    {
        if (name.Length == 0)
            return house.Job;
        // A remote is often called as its room, which is never in service.
        var controls = house.Panels.Concat<Subject>(house.Hubs).Concat(house.Remotes).Where(s => SameName.Comparer.Equals(s.Name, name)).ToList();
        if (controls is [var one] && house.Windows.All(w => !SameName.Comparer.Equals(w.Tag, name)))
            return one.Item;
        // A part of the kit is often called as its sort, and is never in service: who has one hub says "hub".
        if (ItemsNamed.Sort(name) is { } sort and (ItemKind.Panel or ItemKind.Hub or ItemKind.Remote) && house.FindTag(name) is null)
        {
            var all = house.ItemsOf(sort).ToList();
            return all is [var only] ? only
                : all.Count == 0 ? new Refusal($"This house has no {ItemsNamed.Word(sort)} yet.")
                : new Refusal($"Say which {ItemsNamed.Word(sort)}: {string.Join(", ", all.Select(house.NameOf))}.");
        }
        return ItemsNamed.Find(house, name).Then<Item>(items =>
            items.FirstOrDefault(i => i.Kind == ItemKind.Window) is { } window && house.FindWindow(window.Id) is { Units.Length: > 1 } several
                && SameName.Comparer.Equals(several.Tag, name)
                ? new Refusal($"{several.Tag} has several units: write {string.Join(" or ", several.Units.Select(u => u.Tag))}.")
                : items.FirstOrDefault(i => i.Kind == ItemKind.Unit) ?? items[0]);
    }

    private static Result<ServiceSaid> Said(House house, ServiceSaid said, string who, IEnumerable<string> parts)
    {
        Result<ServiceSaid> all = said;
        if (who.Length > 0)
            all = ServiceFacts.By.ReadTyped(who, house).Then<ServiceSaid>(stored => said with { By = stored });
        foreach (var part in parts)
            all = all.Then(so => ServiceWords.Refuse(part) is { } unclear ? unclear : With(house, so, part));
        return all;
    }

    private static Result<ServiceSaid> With(House house, ServiceSaid said, string part)
    {
        if (After(SerialWord, part) is { } serial)
            return Once(UnitFacts.Serial, said.NewSerial, serial, house).Then<ServiceSaid>(stored => said with { NewSerial = stored });
        if (After(ClaimWord, part) is { } claim)
            return Once(ServiceFacts.Claim, said.Claim, claim, house).Then<ServiceSaid>(stored => said with { Claim = stored });
        if (KebabCase.Read<ClaimOutcome>(part.Replace(' ', '-').ToLowerInvariant()) is { } outcome)
        {
            return said.Claim is null ? new Refusal($"Write the number of the claim before what became of it: claim C-17, {part}.")
                : said.Outcome is { } before && before != outcome
                ? SaidTwice.Refuse(ServiceFacts.Outcome.Label, ServiceFacts.Outcome.Show(before, house), part)
                : said with { Outcome = outcome };
        }
        var cause = said.Cause is { } so ? $"{so}, {part}" : part;
        return ServiceFacts.Cause.ReadTyped(cause, house).Then<ServiceSaid>(stored => said with { Cause = stored });
    }

    private static Result<string> Once(Fact<string> fact, string? said, string typed, House house) => fact.ReadTyped(typed, house).Then<string>(stored =>
        said is not null && said != stored ? SaidTwice.Refuse(fact.Label, said, stored) : stored);

    private static string? After(string word, string part) =>
        part.StartsWith(word, StringComparison.OrdinalIgnoreCase) && part[word.Length..].Trim() is { Length: > 0 } rest ? rest : null;
}

using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>One line that adds a contact, and one that adds a visit.</summary>
public static partial class QuickPeople
{
    /// <summary>Stands before who is expected.</summary>
    public const char BeforeWho = '@';

    /// <summary>What visits are called, beside the names of their phases: common practice, no published source.</summary>
    private static readonly (string Words, Phase Phase)[] Usual =
    [
        ("Framing", Phase.WalkThrough), ("Pull", Phase.RoughIn), ("Delivery", Phase.Receive), ("Boxes", Phase.Receive), ("Electrician", Phase.Power),
    ];

    /// <summary>A day may be three words: <c>14 mar 2026</c>.</summary>
    private const int MostOfADay = 3;

    /// <summary>A contact: the name, then in any order the part in the job and the number, with commas between: <c>Ash Example, crew, 555 0101</c>.</summary>
    public static Result<Draft> Contact(House house, string line)
    {
        var words = line.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
            return new Refusal("Type a name.");
        var draft = AddItems.Named(house, ItemKind.Contact, words[0]);
        foreach (var word in words.Skip(1))
            draft = draft.Then(d => With(house, d, word));
        return draft;
    }

    /// <summary>
    /// A visit: its day where one is agreed, what is done, and behind @ who is expected: <c>2026-05-04 Hang upstairs @Ash, Bo</c>. Where what is done begins
    /// with the name of a phase, it belongs to that.
    /// </summary>
    /// <param name="house">The house.</param>
    /// <param name="line">What was typed.</param>
    /// <param name="today">Which day it is, for a day that is said from there; null where that is not known.</param>
    /// <param name="addUnknown">
    /// Whether who is expected and not known yet becomes a contact, to be shown to whoever typed it; refused where nobody sees it.
    /// </param>
    public static Result<Draft> Visit(House house, string line, DateOnly? today = null, bool addUnknown = false)
    {
        var at = line.IndexOf(BeforeWho, StringComparison.Ordinal);
        var (text, who) = at < 0 ? (line.Trim(), "") : (line[..at].Trim(), line[(at + 1)..]);
        var typed = text.Split(' ', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var days = Days(house, typed, today);
        if (!days.Exists(d => d.Day.Ok) && typed.Length > 0 && DateText.BeginsADay(text))
            return new Refusal(days[^1].Day.Reason!);
        var (ofDay, day) = days.Find(d => d.Day.Ok);
        if (ofDay > 0 && Days(house, typed[ofDay..], today).Find(d => d.Day.Ok && d.Day.Value != day.Value) is { Words: > 0 } other
            && !typed[ofDay].All(char.IsAsciiDigit))
        {
            return SaidTwice.Refuse(VisitFacts.On.Label, string.Join(' ', typed[..ofDay]), string.Join(' ', typed[ofDay..(ofDay + other.Words)]));
        }
        if (typed[ofDay..].FirstOrDefault(w => Clock().IsMatch(w) && Times(house, $"{w} x").Times.Count == 0) is { } never)
            return new Refusal($"\"{never}\" is no time of a day: write from when, or from when until when, such as 8:00-14:00.");
        var (what, times) = Times(house, FirstTime(house, typed[ofDay..]));
        if (times.Count > 0 && Times(house, FirstTime(house, what.Split(' '))) is { Times: [var again, ..] } && again.Stored != times[0].Stored)
            return SaidTwice.Refuse(VisitFacts.From.Label, VisitFacts.From.ShowStored(times[0].Stored, house), VisitFacts.From.ShowStored(again.Stored, house));
        if (what.Length == 0)
            return new Refusal("Say what is done on that day, such as Hang upstairs.");
        var draft = AddItems.Visit(house, what).Then<Draft>(d => ofDay > 0 ? d.PutStored(Id(d), VisitFacts.On.Name, day.Value) : d)
            .Then<Draft>(d => times.Aggregate(d, (all, t) => all.PutStored(Id(all), t.Fact.Name, t.Stored)));
        if (PhaseNamed(house, what.Replace('-', ' ')) is { } phase)
            draft = draft.Then<Draft>(d => d.PutStored(Id(d), VisitFacts.Phase.Name, phase));
        foreach (var name in who.Split([',', BeforeWho], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            draft = draft.Then(d => Expecting(house, d, name, addUnknown));
        return draft;
    }

    /// <summary>The phase that what is done begins with the name of, or with what everybody calls a visit of it; null where it says none.</summary>
    private static string? PhaseNamed(House house, string what)
    {
        return VisitFacts.Phase.Options(house).FirstOrDefault(o => Begins(o.Shown.Replace('-', ' ')))?.Stored
            ?? Usual.Where(u => Begins(u.Words)).Select(u => VisitFacts.Phase.Write(u.Phase)).FirstOrDefault();

        bool Begins(string words) => what.StartsWith(words, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>How many words from the first on are a day, the most of them first, and which.</summary>
    private static List<(int Words, Result<string> Day)> Days(House house, string[] typed, DateOnly? today) =>
        [.. Enumerable.Range(1, Math.Min(MostOfADay, typed.Length)).Reverse()
            .Select(n => (Words: n, Day: VisitFacts.On.ReadTyped(string.Join(' ', typed[..n]), house, today)))];

    /// <summary>The words with a time of day that stands among them in front, where nothing else does: <c>Pull cable 13:00</c>.</summary>
    private static string FirstTime(House house, string[] words) =>
        Array.FindIndex(words, w => Clock().IsMatch(w)) is > 0 and var at && Times(house, $"{words[at]} x").Times.Count > 0
            ? string.Join(' ', words[..at].Prepend(words[at]).Concat(words[(at + 1)..])) : string.Join(' ', words);

    [GeneratedRegex(@"^\d{1,2}:\d{2}([-–]\d{1,2}:\d{2})?$", RegexOptions.CultureInvariant)]
    private static partial Regex Clock();

    /// <summary>Takes a time of day off the words, and how long it lasts where a second one stands behind it: <c>08:30-12:00 Hang upstairs</c>.</summary>
    private static (string Words, List<(Fact Fact, string Stored)> Times) Times(House house, string words)
    {
        var first = words.Split(' ', 2, StringSplitOptions.TrimEntries);
        var clocks = first[0].Split('-', '–');
        if (first.Length < 2 || clocks.Length > 2 || clocks.Any(c => !c.Contains(':', StringComparison.Ordinal) || !VisitFacts.From.ReadTyped(c, house).Ok))
            return (words, []);
        var times = clocks.Select(c => TimeOnly.Parse(VisitFacts.From.ReadTyped(c, house).Value, CultureInfo.InvariantCulture)).ToList();
        var taken = new List<(Fact, string)> { (VisitFacts.From, VisitFacts.From.Write(times[0])) };
        if (times.Count == 2 && times[1] > times[0])
            taken.Add((VisitFacts.Lasts, VisitFacts.Lasts.Write(Math.Round((decimal)(times[1] - times[0]).TotalHours, 2))));
        return times.Count == 2 && times[1] <= times[0] ? (words, []) : (first[1], taken);
    }

    private static Result<Draft> With(House house, Draft draft, string word)
    {
        if (ContactFacts.Part.ReadTyped(word, house) is { Ok: true } part)
            return Once(house, draft, ContactFacts.Part, part.Value);
        return ContactFacts.Telephone.ReadTyped(word, house) is { Ok: true } number
            ? Once(house, draft, ContactFacts.Telephone, number.Value)
            : new Refusal($"\"{word}\" is no telephone number and none of: {ContactFacts.Part.Hint}.");
    }

    private static Result<Draft> Once(House house, Draft draft, Fact fact, string stored) =>
        draft.Edits.OfType<Edit.Put>().FirstOrDefault(p => p.Field == fact.Name && p.Value != stored) is { Value: { } said }
            ? SaidTwice.Refuse(fact.Label, fact.ShowStored(said, house), fact.ShowStored(stored, house))
            : draft.PutStored(Id(draft), fact.Name, stored);

    private static Result<Draft> Expecting(House house, Draft draft, string name, bool addUnknown)
    {
        var fit = house.Contacts.Where(c => SameName.Comparer.Equals(c.Name, name)).ToList();
        if (fit.Count == 0)
            fit = [.. house.Contacts.Where(c => c.Name.StartsWith(name, StringComparison.OrdinalIgnoreCase))];
        if (fit.Count == 0 && IsTime(house, name))
            return new Refusal($"\"{name}\" is no name: write from when until when before what is done, such as 8:00-14:00 Hang upstairs @Ash.");
        return fit is [var one] ? draft.Put(Id(draft), VisitFacts.Expects, YesNo.Yes, one.Id)
            : fit.Count > 1 ? new Refusal($"\"{name}\" fits more than one: {string.Join(", ", fit.Select(c => c.Name))}.")
            : addUnknown ? Newcomer(house, draft, name)
            : new Refusal($"There is no contact {name}. " + (house.Contacts.Any()
                ? $"There are: {string.Join(", ", house.Contacts.Select(c => c.Name).Take(8))}."
                : "Add who is expected first, with the telephone number."));
    }

    /// <summary>Whether it says an hour or how long it lasts, or has no letter: <c>8:00</c>, <c>6 h</c>, <c>Bo from 8:00</c>.</summary>
    private static bool IsTime(House house, string name) => !name.Any(char.IsLetter) || Lasting().IsMatch(name)
        || name.Split([' ', '-', '–'], StringSplitOptions.RemoveEmptyEntries).Any(w => char.IsAsciiDigit(w[0]) && VisitFacts.From.ReadTyped(w, house).Ok);

    [GeneratedRegex(@"(^|\s)\d+([.,]\d+)?\s*(h|hrs?|hours?|min|minutes?)(\s|$)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Lasting();

    private static Result<Draft> Newcomer(House house, Draft draft, string name) => ContactFacts.Name.ReadTyped(name, house).Then<Draft>(stored =>
        (draft with { What = $"{draft.What}; new contact {stored}" }).New(ItemKind.Contact, House.RootId, out var contact)
            .PutStored(contact, ContactFacts.Name.Name, stored).Put(Id(draft), VisitFacts.Expects, YesNo.Yes, contact));

    private static string Id(Draft draft) => draft.Edits.OfType<Edit.Add>().First().Item;
}

using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.BinderSections;

/// <summary>Whom the owner calls, and for what; what nobody typed is a blank to write in, and the owner is never told to call himself.</summary>
internal static class Calls
{
    private static readonly Inline OfCrew = Ours("A covering that stays still, and the crew's work");
    private static readonly Inline OfMains = Ours("A breaker that trips again, and all mains work: a licensed electrician");

    /// <summary>
    /// The contacts that are for after handover; where the crew or the electrician is not among them, whoever else was noted
    /// with a number, or has that part in the job; and the makers.
    /// The contact on site is for the time of the works.
    /// </summary>
    public static IEnumerable<(Inline For, Inline Who, Inline Number, Inline Note)> Of(House house)
    {
        var contacts = house.Contacts.Where(c => c.AfterHandover && c.Part != ContactPart.Owner).ToList();
        foreach (var contact in contacts)
            yield return (For(contact), contact.Entry(ContactFacts.Name), Number(contact), contact.Entry(ContactFacts.Note));
        var job = new JobItself(house);
        if (!contacts.Exists(c => c.Part == ContactPart.Crew))
        {
            var crew = Call(house, OfCrew, job.Show(HouseFacts.WarrantyCall), job.Show(HouseFacts.Crew));
            foreach (var call in OrOfPart(house, ContactPart.Crew, [crew]))
                yield return call;
        }
        foreach (var kinds in KindsInUse.Of(house).Where(k => !string.IsNullOrWhiteSpace(k.Show(CoveringKindFacts.WarrantyCall)))
            .GroupBy(k => k.Show(CoveringKindFacts.WarrantyCall)))
            yield return Call(house, Ours($"The maker's warranty: {Join(", ", [.. kinds.Select(k => k.OnPaper())])}"), kinds.Key, null) is var call
                && kinds.All(k => k.IsChecked(CoveringKindFacts.WarrantyCall)) is var known
                ? (call.For, call.Who.Marked(!known), call.Number.Marked(!known), call.Note) : default;
        if (house.Panels.IsEmpty || contacts.Exists(c => c.Part == ContactPart.Electrician))
            yield break;
        var connected = house.Panels.Select(p => p.Show(PanelFacts.ConnectedBy)).Where(t => !string.IsNullOrWhiteSpace(t)).DefaultIfEmpty("").Distinct();
        var calls = connected.Select(typed => Licensed(house, typed, Call(house, OfMains, typed, null))).ToList();
        foreach (var call in OrOfPart(house, ContactPart.Electrician, calls))
            yield return call;
    }

    /// <summary>Who connected panels is a licensed electrician by the number that stands there, and by nothing else.</summary>
    private static (Inline For, Inline Who, Inline Number, Inline Note) Licensed(House house, string typed,
        (Inline For, Inline Who, Inline Number, Inline Note) call) =>
        call.Who == Blank || house.Panels.Any(p => p.Show(PanelFacts.ConnectedBy) == typed && p.Item.Get(PanelFacts.Licence) is not null)
            ? call : call with { Note = Ours("no license was noted: ask for it") };

    /// <summary>The calls that have a number, and for those that have none whoever of that part in the job left one.</summary>
    private static IEnumerable<(Inline For, Inline Who, Inline Number, Inline Note)> OrOfPart(House house, ContactPart part,
        IReadOnlyList<(Inline For, Inline Who, Inline Number, Inline Note)> calls)
    {
        var left = house.Contacts.Where(c => c.Part == part && c.Telephone is not null && c.Item.Get(ContactFacts.AfterHandover) != YesNo.No
            && !IsClient(house, c.Show(ContactFacts.Name))).ToList();
        return left.Count == 0 || calls.All(c => c.Number != Blank) ? calls
            : calls.Where(c => c.Number != Blank).Concat(left.Select(c => (For(c), c.Entry(ContactFacts.Name), Number(c), c.Entry(ContactFacts.Note))));
    }

    private static Inline For(Contact contact) => contact.Part switch
    {
        ContactPart.Crew => OfCrew,
        ContactPart.Electrician => OfMains,
        _ => contact.Entry(ContactFacts.Part),
    };

    private static Inline Number(Contact contact) =>
        contact.Telephone is not { } typed ? Blank : PhoneNumber.Part(typed) is { Who.Length: 0, Number: { } number } ? number : typed;

    private static (Inline For, Inline Who, Inline Number, Inline Note) Call(House house, Inline what, string? typed, string? otherwise)
    {
        var (who, number) = PartUnlessClient(house, typed);
        if (otherwise is not null && who.Length == 0)
            (who, number) = PartUnlessClient(house, otherwise) is var (name, itsNumber) ? (name, number ?? itsNumber) : default;
        return (what, who.Length == 0 ? Blank : who, number ?? Blank, Dash);
    }

    private static (string Who, Inline? Number) PartUnlessClient(House house, string? typed)
    {
        var call = PhoneNumber.Part(typed ?? "");
        return call.Who.Length > 0 && IsClient(house, call.Who) ? ("", null) : call;
    }

    private static bool IsClient(House house, string name) => SameName.Comparer.Equals(name, new JobItself(house).Show(HouseFacts.Client));
}

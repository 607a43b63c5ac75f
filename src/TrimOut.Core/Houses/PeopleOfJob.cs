using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>Who stands in the people of a job, by name.</summary>
internal static class PeopleOfJob
{
    /// <summary>Words for somebody's part in the job that is none of an electrician's, where they stand in place of a name.</summary>
    private static readonly string[] Parts =
    [
        "owner", "the owner", "house owner", "homeowner", "client", "the client", "builder", "the builder", "crew", "the crew", "installer", "we", "us", "me",
        "Eigentümer", "Bauherr", "Bauherrin", "Kunde", "Kundin", "Monteur", "wir", "ich", "dueño", "dueña", "propietario", "propietaria",
        "cliente", "instalador",
    ];

    /// <summary>
    /// Whether a name is that of the crew, of one of it, of the client, of the site contact, a word for one of these, or that of a contact with another
    /// part than the electrician's. Whoever is written as an electrician
    /// too, in the name itself or among the contacts, is one.
    /// </summary>
    /// <param name="house">The house.</param>
    /// <param name="name">The name that somebody typed.</param>
    public static bool OtherThanElectrician(House house, string name)
    {
        var parts = house.Contacts.Where(c => c.Item.Get(ContactFacts.Name) is { } of && SameName.Comparer.Equals(of, name)).Select(c => c.Part).ToList();
        return !parts.Contains(ContactPart.Electrician)
            && (parts.Any(p => p is not null) || Parts.Contains(name.Trim(), SameName.Comparer)
                || SameName.Comparer.Equals(house.Job.Get(HouseFacts.Client) ?? "", name) || IsSiteContact(house, name)
                || (house.Job.Get(HouseFacts.Crew) is { } crew && NamesOf(crew).Contains(name, SameName.Comparer)));
    }

    /// <summary>Whether the site contact is that name, with or without a telephone number behind it.</summary>
    private static bool IsSiteContact(House house, string name) => house.Job.Get(HouseFacts.SiteContact) is { } contact
        && SameName.Comparer.Equals(contact.TrimEnd("0123456789+-/().,;: ".ToCharArray()), name);

    private static IEnumerable<string> NamesOf(string crew) =>
        crew.Split([",", ";", "&", "+", "/", " and ", " und "], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Prepend(crew);
}

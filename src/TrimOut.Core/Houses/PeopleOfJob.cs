using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>Who stands in the people of a job, by name.</summary>
internal static class PeopleOfJob
{
    /// <summary>
    /// Whether a name is that of the crew, of one of it, or of a contact with another part than the electrician's. Whoever is written as an electrician
    /// too, in the name itself or among the contacts, is one.
    /// </summary>
    /// <param name="house">The house.</param>
    /// <param name="name">The name that somebody typed.</param>
    public static bool OtherThanElectrician(House house, string name)
    {
        var parts = house.Contacts.Where(c => c.Item.Get(ContactFacts.Name) is { } of && SameName.Comparer.Equals(of, name)).Select(c => c.Part).ToList();
        return !parts.Contains(ContactPart.Electrician)
            && (parts.Any(p => p is not null) || (house.Job.Get(HouseFacts.Crew) is { } crew && NamesOf(crew).Contains(name, SameName.Comparer)));
    }

    private static IEnumerable<string> NamesOf(string crew) =>
        crew.Split([",", ";", "&", "+", "/", " and ", " und "], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Prepend(crew);
}

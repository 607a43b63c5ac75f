using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>What was done in service, as the life of each thing that it was done to; nothing where nothing was.</summary>
internal static class UnitLives
{
    public const string Title = "What was done in service";

    public static void Write(MarkdownWriter to, PaperData data)
    {
        if (!data.House.Services.Any())
            return;
        to.Heading(3, Title);
        Table(to, data);
    }

    public static void Table(MarkdownWriter to, PaperData data)
    {
        var services = data.House.Services.ToList();
        to.Filled(["What", "Day", "Done", "By", "Cause", "Serial taken off", "Serial put in", "Claim", "Came to"], services
            .GroupBy(s => s.About?.Id).OrderBy(of => PlaceOf(data.House, of.Key)).SelectMany(of => Life(data, [.. of])), "Nothing.");
    }

    private static IEnumerable<Inline[]> Life(PaperData data, List<Service> services)
    {
        var house = data.House;
        var name = services[0].About is { } about ? NameOf(house, about) : Dash;
        if (services.Find(s => s.ReplacesUnit) is { } first)
        {
            yield return Row(name, new JobItself(house).DayOrNotYet(HouseFacts.AcceptedOn, data.Date), Ours("handed over"), Dash, Dash, Dash,
                first.TakenOff.OrDash(), Dash, Dash);
        }
        foreach (var service in services)
        {
            yield return Row(name, service.DayOrNotYet(ServiceFacts.On, data.Date), service.Entry(ServiceFacts.Kind), service.Entry(ServiceFacts.By),
                service.Entry(ServiceFacts.Cause), service.TakenOff.OrDash(),
                service.ReplacesUnit ? service.NewSerial is { } serial ? serial : NotYet : Dash,
                service.Entry(ServiceFacts.Claim), service.ClaimIsOpen ? NotYet : (service.SettledBy ?? service).Entry(ServiceFacts.Outcome));
        }
    }

    /// <summary>Units in the order of the walk, then panels, hubs and remotes, the house last.</summary>
    private static (int, int) PlaceOf(House house, string? id) => house.FindUnit(id ?? "") is { } unit ? (0, house.Units.IndexOf(unit))
        : id is null or House.RootId ? (2, 0)
        : (1, house.Find(id)?.Place ?? 0);
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>What to try when a unit does not move, the harmless things first, and who may open what.</summary>
internal static class WhenAUnitStops
{
    public static Section Section { get; } = new("stops", "When a unit stops", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var job = new JobItself(data.House);
        to.Say("Try these in this order, and stop at the first that helps. Nothing here asks you to open anything, climb or use a tool.");
        to.Steps(Tries(data.House));

        to.Heading(3, "Who may open the panel");
        to.Table(["Who", "May", "May not"],
        [
            Row(Ours("Owner"), Ours("Read its door, its labels and its lights; switch its breaker off"), Ours("Open it, unplug or reset anything inside it")),
            Row(Ours("Crew trained on low voltage"), Ours("Work on its low-voltage outputs with the breaker off and checked dead"),
                Ours("Touch its mains side")),
            Row(Ours("Licensed electrician"), Ours("Work on its mains side, its breaker and its feed"), Dash),
        ]);

        to.Heading(3, "Whom to call");
        to.Facts("Whom", "Entry",
            ("Crew", job.Entry(HouseFacts.Crew)),
            ("Site contact", job.Entry(HouseFacts.SiteContact)),
            ("Electrician", data.House.Panels.Select(p => p.Show(PanelFacts.ConnectedBy)).Distinct().JoinOrDash()));
        People.WriteContacts(to, data.House.Contacts.Where(c => c.AfterHandover));
    }

    private static IEnumerable<Inline> Tries(House house)
    {
        yield return Ours(
            "First of all: is there a smell of burning, heat, smoke, a buzzing panel or water near it? " +
                "Then switch the breaker off if you can reach it safely, leave it off, keep away, and call a licensed electrician; where there is fire, " +
                "the fire service.");
        yield return Ours("Look from the floor whether something is in its way: a handle, a plant, a toy, a window standing open. Clear it and try again.");
        yield return Ours("Wait twenty minutes. A motor that ran many times in a row may be resting to cool.");
        yield return house.Hubs.IsEmpty
            ? Ours("Try another remote that moves it. If that works, change the battery of the first.")
            : Ours("Try another remote that moves it, then the hub. If one of them works, change the battery of the remote that did not.");
        yield return Ours(
            "See whether its neighbours move. The panel map says which units share its panel: if they all stopped, " +
                "the fault is likely in the supply and not in the unit.");
        if (house.Units.Any(u => u.Power == PowerSource.PlugIn))
            yield return Ours("For a unit on a plug-in supply: see that the plug is in, and that the socket works with a lamp.");
        if (house.Units.Any(u => u.Power == PowerSource.Battery))
            yield return Ours("For a unit with its own battery: charge it as the maker's sheet says.");
        if (!house.Panels.IsEmpty)
            yield return Ours(
                "If a whole panel is dead, look at its breaker, which the panel map names. If it has tripped, switch it on once. If it trips again, " +
                    "leave it off and call a licensed electrician.");
        yield return Ours("Call the crew. Say the unit's tag, its room, its panel and output, and what you tried.");
    }
}

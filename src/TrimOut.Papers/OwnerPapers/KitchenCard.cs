using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.BinderSections;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.OwnerPapers;

/// <summary>One page for the kitchen drawer: what to do when something stops, and nothing else.</summary>
internal static class KitchenCard
{
    public static Paper Paper { get; } = new("card", "Kitchen card", "the owner",
        "One page for the drawer: what to do when one covering stops, when all stop, which breaker it is, and whom to call.",
        Cover,
        new Section("one", WhenAUnitStops.OneStops, (to, data) => WhenAUnitStops.One(to, data.House)),
        new Section("all", WhenAUnitStops.AllStop, All),
        new Section("call", WhenAUnitStops.WhomToCall, (to, data) => WhenAUnitStops.Call(to, data.House)),
        new Section("book", "All else is in the owner's binder", (to, data) => BookCode.Write(to, data, WhenAUnitStops.Section.Title)))
    {
        MarksAtFoot = true,
    };

    private static void Cover(MarkdownWriter to, PaperData data)
    {
        WhenAUnitStops.Danger(to);
        List<Inline> said = OpenStops.IsDraft(data) ? [OpenStops.DraftMark] : [];
        if (new JobItself(data.House).Shown(HouseFacts.Address) is { } address)
            said.Add(Ours($"This house: {address}"));
        if (said.Count > 0)
            to.Say(Beside(said));
    }

    private static void All(MarkdownWriter to, PaperData data)
    {
        if (data.House.Panels.IsEmpty)
            to.Say("There is no panel in this house.");
        else
            WhenAUnitStops.All(to, data.House, withUnits: false);
    }
}

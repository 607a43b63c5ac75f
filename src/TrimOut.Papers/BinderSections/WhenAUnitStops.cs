using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>The first page: danger, one covering that stops, all that stop with their breakers, and whom to call.</summary>
internal static class WhenAUnitStops
{
    public static Section Section { get; } = new("stops", "When something stops", Write) { Part = "Part one: for the owner" };

    /// <summary>Heads what to try when one covering stops.</summary>
    public const string OneStops = "One covering stops";

    /// <summary>Heads what to do when more than one stops.</summary>
    public const string AllStop = "All stop, or all of one panel";

    /// <summary>Heads the numbers.</summary>
    public const string WhomToCall = "Whom to call";

    private static void Write(MarkdownWriter to, PaperData data)
    {
        Danger(to);
        to.Heading(3, OneStops);
        One(to, data.House);
        if (!data.House.Panels.IsEmpty)
        {
            to.Heading(3, AllStop);
            All(to, data.House, withUnits: true);
        }
        to.Heading(3, WhomToCall);
        Call(to, data.House);
    }

    /// <summary>What is heeded before anything else.</summary>
    public static void Danger(MarkdownWriter to) =>
        to.Say(Strong("Danger first.") + Ours("A smell of burning, heat, smoke, a buzzing panel or water near it: " +
            "switch its breaker off if you can reach it safely, leave it off, keep away, and call a licensed electrician; " +
            "where there is fire, the fire service."));

    /// <summary>What to try when one covering stops.</summary>
    public static void One(MarkdownWriter to, House house)
    {
        to.Say("Try these in this order, and stop at the first that helps. Nothing here asks you to open anything, climb or use a tool.");
        to.Steps(Tries(house));
    }

    /// <summary>Which breaker feeds which panel, and that its rooms.</summary>
    /// <param name="to">The paper.</param>
    /// <param name="house">The house, with a panel at least.</param>
    /// <param name="withUnits">Whether the units of each panel are named too, with their outputs.</param>
    public static void All(MarkdownWriter to, House house, bool withUnits)
    {
        to.Say("Look at the breaker of their panel. If it has tripped, switch it on once. " +
            "If it trips again, leave it off and call a licensed electrician.");
        string[] columns = ["Panel", "Hangs", "Board", "Breaker", "Rooms"];
        to.Filled(withUnits ? [.. columns, "Output: unit"] : columns, house.Panels.Select(p =>
        {
            var row = Row(p.Name, p.Entry(PanelFacts.Location), p.Entry(PanelFacts.Board), Breaker(p), Rooms(p));
            return withUnits ? [.. row, Units(p)] : row;
        }));
    }

    private static Inline Units(Panel panel) => panel.Runs.OrderBy(r => r.Output)
        .Select(r => (Inline?)(r.Output is { } output ? Join(": ", [Inline.Number(output), r.Name]) : r.Name)).JoinOrDash("; ");

    /// <summary>Whom to call, and for what.</summary>
    public static void Call(MarkdownWriter to, House house) =>
        to.Filled(["For what", "Who", "Number", "Note"], Calls.Of(house).Select(c => Row(c.For, c.Who, c.Number, c.Note)));

    /// <summary>The breaker of a panel with its rating.</summary>
    public static Inline Breaker(Panel panel) => new[] { panel.Shown(PanelFacts.Breaker), panel.Shown(PanelFacts.BreakerRating) }.JoinOrDash();

    private static Inline Rooms(Panel panel) => panel.Runs.Select(r => r.Unit.Window.Room?.FullName).Distinct().JoinOrDash();

    private static IEnumerable<Inline> Tries(House house)
    {
        yield return Ours("Look from the floor whether something is in its way: a handle, a plant, a toy, a window standing open. Clear it and try again.");
        yield return Ours(
            "If it ran many times in a row, leave it for a while: whether its motor rests then, and for how long, is on the maker's sheet.");
        yield return house.Hubs.IsEmpty
            ? Ours("Try another remote that moves it. If that works, change the battery of the first.")
            : Ours("Try another remote that moves it, then the hub. If one of them works, change the battery of the remote that did not.");
        if (house.Units.Any(u => u.Power == PowerSource.PlugIn))
            yield return Ours("For a unit on a plug-in supply: see that the plug is in, and that the outlet works with a lamp.");
        if (house.Units.Any(u => u.Power == PowerSource.Battery))
            yield return Ours("For a unit with its own battery: charge it as the maker's sheet says.");
        if (!house.Panels.IsEmpty)
            yield return Ours("See whether the others on its panel move. " +
                "If they all stopped, the fault is likely in the supply and not in the unit: read on below.");
        yield return Ours("Call the crew. Say which room and which of its windows, and what you tried.");
    }
}

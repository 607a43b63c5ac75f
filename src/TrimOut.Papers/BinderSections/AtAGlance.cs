using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>A plan of each floor, and the units room by room: what each is, what moves it, and what feeds it.</summary>
internal static class AtAGlance
{
    public static Section Section { get; } = new("glance", "The house at a glance", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var house = data.House;
        foreach (var floor in FloorPlan.Floors(house))
            to.Draw(floor.Name, FloorPlan.Describe(floor), words => FloorPlan.Of(floor, words));

        to.Heading(3, "Units by room");
        to.Filled(["Room", "Unit", "Kind", "Name at the hub", "Remotes", "Power"],
            house.Rooms.Select(r => (Name: (Inline)r.FullName, Windows: r.Windows.AsEnumerable()))
            .Append((Name: Ours("(no room yet)"), Windows: house.Windows.Where(w => w.Room is null)))
            .SelectMany(r => r.Windows.Where(w => !w.LeftOut).SelectMany(w => w.Units).Select(u => Row(
                r.Name, u.Tag, u.Entry(UnitFacts.Kind), u.EntryOrNotYet(UnitFacts.HubName), u.Remotes.Select(m => m.Name).JoinOrDash(), Power(u)))),
            "No units yet.");

        var leftOut = house.Windows.Where(w => w.LeftOut).ToList();
        if (leftOut.Count == 0)
            return;
        to.Heading(3, "Windows left out on purpose");
        to.Filled(["Window", "Room", "Because"],
            leftOut.Select(w => Row(w.Tag, (w.Room?.FullName).OrDash(), w.Entry(WindowFacts.NotCoveredBecause))));
    }

    private static Inline Power(Unit unit) =>
        unit.Run is { Panel: { } panel, Output: { } output } ? Ours($"{panel.Name}, output {output}") : unit.Entry(UnitFacts.Power);
}

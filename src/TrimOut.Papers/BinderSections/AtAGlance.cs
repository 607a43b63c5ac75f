using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>How many of everything, which room has what, and how far each phase is.</summary>
internal static class AtAGlance
{
    public static Section Section { get; } = new("glance", "The house at a glance", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var house = data.House;
        var leftOut = house.Windows.Where(w => w.LeftOut).ToList();
        to.Facts("What", "How many",
            ("Rooms", Number(house.Rooms.Length)),
            ("Windows", Ours($"{house.Windows.Length - leftOut.Count} with a covering, {leftOut.Count} left out on purpose")),
            ("Units",
                Ours($"{house.Units.Length}: {Units(house, PowerSource.Panel)} on a panel, {Units(house, PowerSource.PlugIn)} on a plug-in supply, " +
                $"{Units(house, PowerSource.Battery)} on a battery, {Units(house, null)} not said yet")),
            ("Home runs", Number(house.Runs.Length)),
            ("Panels", Number(house.Panels.Length)),
            ("Hubs", Number(house.Hubs.Length)),
            ("Remotes", Number(house.Remotes.Length)));

        to.Heading(3, "Rooms and their units");
        to.Table(["Room", "Floor", "Windows", "Units"],
            [.. house.Rooms.Select(r => RoomRow(r.Name, r.Show(RoomFacts.Floor), [.. r.Windows.Where(w => !w.LeftOut)])), .. NoRoom(house)],
            "No rooms yet.");

        foreach (var floor in FloorPlan.Floors(house))
            to.Draw(floor.Name, FloorPlan.Describe(floor), words => FloorPlan.Of(floor, words));

        to.Heading(3, "Windows left out on purpose");
        to.Table(["Window", "Room", "Because"],
            leftOut.Select(w => Row(w.Tag, (w.Room?.FullName).OrDash(), w.Entry(WindowFacts.NotCoveredBecause))));


        if (data.OwnerOnly)
            return;
        to.Heading(3, "How far each phase is");
        to.Table(["Phase", "Steps done", "Steps in all", "Open stops"], PhaseNames.All.Select(p =>
        {
            var progress = Progress.Of(house, p, data.Steps);
            return Row(Ours(p.Full()), Number(progress.Done), Number(progress.Total), Number(data.Report.StopsIn(p)));
        }));
    }

    private static IEnumerable<Inline[]> NoRoom(House house) =>
        house.Windows.Where(w => !w.LeftOut && w.Room is null).ToList() is { Count: > 0 } lost ? [RoomRow(Ours("(no room yet)"), null, lost)] : [];

    private static Inline[] RoomRow(Inline room, string? floor, List<Window> windows) =>
        Row(room, floor.OrDash(), windows.Select(w => w.Tag).JoinOrDash(), windows.SelectMany(w => w.Units).Select(u => u.Tag).JoinOrDash());

    private static int Units(House house, PowerSource? power) => house.Units.Count(u => u.Power == power);
}

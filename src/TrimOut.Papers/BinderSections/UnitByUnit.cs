using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.BinderSections;

/// <summary>One part per window: its drawing, and everything that may be asked about each of its units.</summary>
internal static class UnitByUnit
{
    public static Section Section { get; } = new("unit_by_unit", "Window by window", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var windows = data.House.Windows.Where(w => !w.LeftOut).ToList();
        if (windows.Count == 0)
            to.Say("No windows yet.");
        var presets = Presets(data.House);
        foreach (var window in windows)
        {
            data.Stop.ThrowIfCancellationRequested();
            to.Heading(3, $"{window.Tag}: {(window.Room?.FullName).OrDash()}");
            var drawing = to.Drawing(window.Tag, WindowElevation.Describe(window), words => WindowElevation.Of(window, words));
            to.Say(window.Units.Where(RollSection.CanDraw).Aggregate(drawing, (row, unit) =>
                row + to.Drawing(unit.Tag, RollSection.Describe(unit), words => RollSection.Of(unit, words))));
            to.Table([Ours("About"), .. window.Units.Select(u => (Inline)u.Tag)], Rows(window, presets));
        }
    }

    private static IEnumerable<Inline[]> Rows(Window window, ILookup<string, string> presets)
    {
        (string What, Func<Unit, Inline> Value)[] rows =
        [
            ("Kind", u => u.Entry(UnitFacts.Kind)),
            ("Ordered size", u => Join(" x ", [u.Entry(UnitFacts.OrderWidth), u.Entry(UnitFacts.OrderHeight)])),
            ("Finish and head cover",
                u => new[] { u.Shown(UnitFacts.Fabric), u.Shown(UnitFacts.Colour), u.Shown(UnitFacts.Opacity), u.Shown(UnitFacts.HeadCover) }.JoinOrDash()),
            ("Power", u => u.Run is { Panel: { } panel, Output: { } output } ? Ours($"{panel.Name}, output {output}") : u.Entry(UnitFacts.Power)),
            ("Name at the hub", u => u.EntryOrNotYet(UnitFacts.HubName)),
            ("Remotes", u => u.Remotes.Select(r => r.Name).JoinOrDash()),
            ("Presets", u => presets[u.Id].JoinOrDash("; ")),
            ("Limits", u => Ours($"open {u.EntryOrNotYet(UnitFacts.OpenGap)} above the glass, closed {u.EntryOrNotYet(UnitFacts.CloseGap)} above the sill")),
            ("In a power cut", u => u.Kind?.Entry(CoveringKindFacts.WithoutPower) ?? Dash),
            ("Cords and chains", u => u.Shown(UnitFacts.FreeCord) is not { } free ? NotYet
                : Ours($"{free} free, held by {u.EntryOrNotYet(UnitFacts.CordHeldBy)}, " +
                $"confirmed by {u.EntryOrNotYet(UnitFacts.CordConfirmedBy)}")),
            ("Serial", u => u.EntryOrNotYet(UnitFacts.Serial)),
            ("Pictures", u => new[] { window.Show(WindowFacts.Photo), u.Show(UnitFacts.Photo), u.Run?.Show(RunFacts.Photo) }.JoinOrDash("; ")),
            ("Notes", u => new[] { window.Show(WindowFacts.Note), u.Show(UnitFacts.Note), u.Run?.Show(RunFacts.Note) }.JoinOrDash("; ")),
        ];
        return rows.Select(r => (Inline[])[Ours(r.What), .. window.Units.Select(r.Value)]);
    }

    /// <summary>The presets of the house by the id of the unit that they place.</summary>
    private static ILookup<string, string> Presets(House house) =>
        (from remote in house.Remotes
         from preset in remote.Presets
         from position in preset.Item.All(PresetFacts.Position)
         select (Unit: position.Key, Text: $"{remote.Name}: {preset.Name} {position.Value} %")).ToLookup(p => p.Unit, p => p.Text);
}

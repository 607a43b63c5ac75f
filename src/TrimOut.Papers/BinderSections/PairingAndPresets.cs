using TrimOut.Core.Facts;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>What the hub calls each unit, which remote moves it, and what is stored.</summary>
internal static class PairingAndPresets
{
    public static Section Section { get; } = new("pairing", "Pairing and presets", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var house = data.House;
        to.Heading(3, "Hubs");
        to.Table(["Hub", "Type", "Stands", "Units", "Remotes"], house.Hubs.Select(h => Row(
            h.Name, h.Entry(HubFacts.Type), h.Entry(HubFacts.Location),
            Number(h.Units.Count()), Number(h.Remotes.Count()))));

        to.Heading(3, "Units and their remotes");
        to.Table(["Unit", "Room", "Name at the hub", "Hub", "Group", "Remotes"], house.Units.Select(u => Row(
            u.Tag, (u.Window.Room?.FullName).OrDash(), u.EntryOrNotYet(UnitFacts.HubName), u.EntryOrNotYet(UnitFacts.Hub),
            u.Entry(UnitFacts.Group), u.Remotes.Select(r => r.Name).JoinOrDash())));

        to.Heading(3, "Remotes");
        to.Table(["Remote", "Type", "Kept in", "Wall plate", "Moves"], house.Remotes.Select(r => Row(
            r.Name, r.Entry(RemoteFacts.Type), (r.Room?.FullName).OrDash(), r.Entry(RemoteFacts.Plate), r.Units.Select(u => u.Tag).JoinOrDash())));

        to.Heading(3, "Presets");
        to.Say("A position says how far a unit is open: 0 % is closed, 100 % is open.");
        to.Table(["Remote", "Preset", "Positions"],
            from remote in house.Remotes
            from preset in remote.Presets
            select Row(remote.Name, preset.Name, preset.Positions.Select(p => $"{p.Unit.Tag} {p.PercentOpen} %").JoinOrDash()));

        to.Heading(3, "How pairing and storing are done");
        to.Table(["Kind", "Hold to pair", "Until", "Hold to store preset", "Until"], KindsInUse.Of(house).Select(k => Row(
            k.OnPaper(), k.Entry(CoveringKindFacts.PairHold), k.Entry(CoveringKindFacts.PairCue),
            k.Entry(CoveringKindFacts.PresetHold), k.Entry(CoveringKindFacts.PresetCue))));
    }
}

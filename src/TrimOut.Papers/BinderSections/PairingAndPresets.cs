using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Which hub holds which units, what moves together, and how pairing is done. Names, remotes and presets stand in part one.</summary>
internal static class PairingAndPresets
{
    public static Section Section { get; } = new("pairing", "Pairing", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var house = data.House;
        if (!house.Hubs.IsEmpty)
            to.Heading(3, "Hubs").Filled(["Hub", "Type", "Stands", "Units", "Remotes"], house.Hubs.Select(h => Row(
                h.Name, h.Entry(HubFacts.Type), h.Entry(HubFacts.Location),
                h.Units.Select(u => u.Tag).JoinOrDash(), h.Remotes.Select(r => r.Name).JoinOrDash())));

        var groups = house.Units.Where(u => !string.IsNullOrWhiteSpace(u.Show(UnitFacts.Group)))
            .GroupBy(u => u.Show(UnitFacts.Group), SameName.Comparer).ToList();
        if (groups.Count > 0)
            to.Heading(3, "What moves together").Table(["Group", "Units"], groups.Select(g => Row(g.Key, g.Select(u => u.Tag).JoinOrDash())));

        to.Heading(3, "How pairing and storing are done");
        to.Filled(["Kind", "Hold to pair", "Until", "Hold to store preset", "Until"], KindsInUse.Alike(house,
            CoveringKindFacts.PairHold, CoveringKindFacts.PairCue, CoveringKindFacts.PresetHold, CoveringKindFacts.PresetCue), "The kit does not say.");
    }
}

using TrimOut.Core.Facts;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Where each unit stops, open and closed.</summary>
internal static class LimitsTable
{
    public static Section Section { get; } = new("limits", "Limits", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        to.Say("The limits are the two places where a unit stops by itself. Closed, 0 means that the bottom bar just touches the sill.");
        var read = new TakenMarks();
        var set = data.House.Units.ToLookup(u => u.Shown(UnitFacts.OpenGap) is not null || u.Shown(UnitFacts.CloseGap) is not null);
        if (set[true].Any())
            to.Table(["Unit", "Open: bar above glass", "Closed: bar above sill", "Read"], set[true].Select(u => Row(
                u.Tag, u.EntryOrNotYet(UnitFacts.OpenGap), u.EntryOrNotYet(UnitFacts.CloseGap), read.Of(u, UnitFacts.OpenGap, UnitFacts.CloseGap))));
        read.Write(to);
        if (set[false].Any())
            to.Say($"Not set yet: {string.Join(", ", set[false].Select(u => u.Tag))}.");
        to.Heading(3, "How limits are set");
        to.Filled(["Kind", "How", "Hold to set a limit", "Until", "Leveling"], KindsInUse.Alike(data.House,
            CoveringKindFacts.LimitsHow, CoveringKindFacts.LimitHold, CoveringKindFacts.LimitCue, CoveringKindFacts.LevelHow), "The kit does not say.");
        to.Say("Whether a unit that was taken down and hung again needs its limits set again is on the maker's sheet.");
    }
}

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
        to.Table(["Unit", "Room", "Open: bar above glass", "Closed: bar above sill", "With, who, when"], data.House.Units.Select(u => Row(
            u.Tag, (u.Window.Room?.FullName).OrDash(), u.EntryOrNotYet(UnitFacts.OpenGap), u.EntryOrNotYet(UnitFacts.CloseGap),
            u.Taken(UnitFacts.OpenGap, UnitFacts.CloseGap))), "No units yet.");
        to.Heading(3, "How limits are set");
        to.Table(["Kind", "How", "Hold to set a limit", "Until", "Levelling"], KindsInUse.Of(data.House).Select(k => Row(
            k.OnPaper(), k.Entry(CoveringKindFacts.LimitsHow), k.Entry(CoveringKindFacts.LimitHold), k.Entry(CoveringKindFacts.LimitCue),
            k.Entry(CoveringKindFacts.LevelHow))));
        to.Say("A unit that was taken down and hung again needs its limits set again.");
    }
}

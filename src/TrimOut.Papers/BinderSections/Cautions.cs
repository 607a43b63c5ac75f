using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>What can hurt somebody, before anything else.</summary>
internal static class Cautions
{
    public static Section Section { get; } = new("cautions", "Cautions", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var code = new JobItself(data.House).Show(HouseFacts.CodeInForce);
        to.List(
            Strong("Mains power.") +
                Ours("The panel is fed from mains. Only a licensed electrician works on its mains side, on its breaker and on the cable that feeds it."),
            Strong("Power off before opening.") +
                Ours("Before anybody opens the panel, takes a unit down or touches a splice: switch its breaker off, keep others from switching it on, " +
                "and check that it is dead."),
            Strong("Children and cords.") +
                Ours("A loop or a cord within a child's reach can strangle. Keep cots, beds and furniture that can be climbed away from windows. " +
                "Leave no free cord, bead chain, hand crank or loop of cable hanging; do not pull at one that you find, and call the crew at once. " +
                "In the United States 16 CFR 1260 governs operating cords on custom window coverings, in Europe EN 13120 does; " +
                        "these are duties of maker, seller and installer, and the local rules say what holds here."),
            Strong("Moving bars.") +
                Ours("A unit moves without warning when a remote or a timer calls it. Keep hands, pets and plants out of its way, " +
                "and do not hang anything on it."),
            Strong("Ladders and height.") +
                Ours("High windows want a ladder on firm ground and a second person, or a scaffold; work there is for people trained for it. " +
                "Never lean on the glass or on a unit."),
            Strong("Drilling near a window.") +
                Ours("Low-voltage cable runs in the walls beside and below the windows, and mains may run near it. " +
                "Look at the cable schedule and ask before drilling."),
            Strong("Local rules come first.") + (string.IsNullOrWhiteSpace(code)
                ? Ours("The wiring rules that the local authority enforces, local safety law and the makers' sheets govern wherever " +
                    "this binder says otherwise.")
                : Ours($"The wiring rules that the local authority enforces ({code}), " +
                    $"local safety law and the makers' sheets govern wherever this binder says otherwise.")));
        if (data.House.Panels.IsEmpty)
            return;
        to.Heading(3, "Who may open the panel");
        to.Table(["Who", "May", "May not"],
        [
            Row(Ours("Owner"), Ours("Read its door, its labels and its lights; switch its breaker off, and on again once after it tripped"),
                Ours("Open it, unplug or reset anything inside it")),
            Row(Ours("Crew trained on low voltage"), Ours("Work on its low-voltage outputs with the breaker off and checked dead"),
                Ours("Touch its mains side")),
            Row(Ours("Licensed electrician"), Ours("Work on its mains side, its breaker and its feed"), Dash),
        ]);
    }
}

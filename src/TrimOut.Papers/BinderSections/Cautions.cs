using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.BinderSections;

/// <summary>What can hurt somebody, before anything else.</summary>
internal static class Cautions
{
    public static Section Section { get; } = new("Cautions first", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var code = new JobItself(data.House).Show(HouseFacts.CodeInForce);
        to.List(
            Inline.Strong("Mains power.") + "The panel is fed from mains. Only a licensed electrician works on its mains side, on its breaker and on the cable that feeds it.",
            Inline.Strong("Power off before opening.") + "Before anybody opens the panel, takes a unit down or touches a splice: switch its breaker off, keep others from switching it on, and check that it is dead.",
            Inline.Strong("Children and cords.") + "A loop or a cord within a child's reach can strangle. Keep cots, beds and furniture that can be climbed away from windows. Leave no free cord, bead chain, hand crank or loop of cable hanging; hand a found one to the crew at once. In the United States 16 CFR 1260 governs operating cords on custom window coverings, in Europe EN 13120 does; these are duties of maker, seller and installer, and the local rules say what holds here.",
            Inline.Strong("Moving bars.") + "A unit moves without warning when a remote or a timer calls it. Keep hands, pets and plants out of its way, and do not hang anything on it.",
            Inline.Strong("Ladders and height.") + "High windows want a ladder on firm ground and a second person, or a scaffold; work there is for people trained for it. Never lean on the glass or on a unit.",
            Inline.Strong("Drilling near a window.") + "Low-voltage cable runs in the walls beside and below the windows, and mains may run near it. Look at the cable schedule and ask before drilling.",
            Inline.Strong("Local rules come first.") + (string.IsNullOrWhiteSpace(code)
                ? "The wiring rules that the local authority enforces, local safety law and the makers' sheets govern wherever this binder says otherwise."
                : $"The wiring rules that the local authority enforces ({code}), local safety law and the makers' sheets govern wherever this binder says otherwise."));
    }
}

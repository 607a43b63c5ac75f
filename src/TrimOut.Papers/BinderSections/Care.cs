using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.BinderSections;

/// <summary>Cleaning, and what to look at once a year.</summary>
internal static class Care
{
    public static Section Section { get; } = new("care", "Care", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        to.Say("The makers' sheets govern. Where they say nothing:");
        to.List(Advice(data.House));
    }

    private static IEnumerable<Inline> Advice(House house)
    {
        yield return Ours(
            "Stop the unit where you can reach it from the floor before you clean it. Use no ladder for cleaning that you would not use for painting.");
        yield return Ours("Dust with a soft brush or a vacuum cleaner with a brush, on low, from the top down.");
        if (KindsInUse.Of(house).Any(k => k.RaisedForm == RaisedForm.Roll))
            yield return Ours("Fabric that rolls: dab a spot with a damp white cloth and let it dry fully before you raise it.");
        if (KindsInUse.Of(house).Any(k => k.RaisedForm == RaisedForm.Stack))
            yield return Ours("Coverings that stack: lower them fully and clean each cell or slat by itself; keep wood dry.");
        yield return Ours("No water, spray or steam near the motor end, a splice or the panel.");
        yield return Ours(
            "Once a year: every unit once fully open and once fully closed, level with its neighbors; no frayed cord, no loose bracket, " +
                "no cable hanging free; the labels at the panel still legible.");
        yield return Ours("Before painting or new windows: have the crew take units down. Tape no cable to a wall, and cut none.");
    }
}

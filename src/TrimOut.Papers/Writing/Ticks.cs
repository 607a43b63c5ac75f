using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Papers.Writing;

/// <summary>Boxes to tick by hand, of which those of steps that are marked are ticked already.</summary>
internal static class Ticks
{
    private static readonly Inline Done = "☒";

    /// <summary>The box of a step: ticked where it is done, a dash where it is not needed, else empty.</summary>
    /// <param name="subject">What is worked on.</param>
    /// <param name="step">The id of a step that there is.</param>
    public static Inline Of(Subject subject, string step) => subject.MarkOf(StepList.Find(step)!) switch
    {
        null => Inline.Box,
        { NotNeededBecause: not null } => Inline.Dash,
        _ => Done,
    };
}

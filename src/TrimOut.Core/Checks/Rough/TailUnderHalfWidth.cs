using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The tail at the window is at least half as long as the unit is wide.</summary>
/// <remarks>
/// <para>Why: with less, nobody can splice in front of the unit, and a unit ordered the other way round can't be saved.</para>
/// <para>To clear: pull more cable while the wall is open.</para>
/// </remarks>
public sealed class TailUnderHalfWidth : RunCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("tail-under-half-width", "Tail is shorter than half the window", Severity.Stop, Phase.RoughIn,
        "width, tail at the window", new Source(Source.CommonPractice, "tail >= width / 2"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (Tail.Unknown(subject) is { } unknown)
            return unknown;
        var (tail, width) = Tail.Of(subject);
        var working = Working.Of(Info.Source.Formula, () => [("tail", tail.In(subject)), ("width", width.In(subject)), ("half", (width / 2).In(subject))]);
        return tail >= width / 2
            ? new Outcome.Fine(working)
            : new Outcome.Found($"The tail is {tail.In(subject)}; half of the width is {(width / 2).In(subject)}.",
                Tail.Mend(subject, $"Pull {(width / 2 - tail).In(subject)} more to the window now; {(width - tail).In(subject)} more makes the whole width."),
                Tail.Field(subject), working);
    }
}

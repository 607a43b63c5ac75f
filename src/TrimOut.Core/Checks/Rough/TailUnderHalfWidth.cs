using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The tail at the window is at least half as long as the unit is wide.</summary>
/// <remarks>
/// <para>Why: with less, nobody can splice in front of the unit, and a unit ordered the other way round can't be saved.</para>
/// <para>To clear: pull more cable while the wall is open.</para>
/// </remarks>
public sealed class TailUnderHalfWidth : RunCheck
{
    private static readonly Message Short = new("The tail is {0}; half of the width is {1}.");
    private static readonly Message ShortOfSeveral = new("The tail is {0}; half of the way along the head to its far end is {1}.", "far-end");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("tail-under-half-width", "Tail is shorter than half the window", Severity.Stop, Phase.RoughIn,
        new Source(Source.CommonPractice, "tail >= width / 2; of one behind others the way along the head to its far end, / 2"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (Tail.Unknown(subject) is { } unknown)
            return unknown;
        var (tail, width) = Tail.Of(subject);
        var working = Working.Of(Info.Source.Formula, () => [("tail", tail.In(subject)), ("width", width.In(subject)), ("half", (width / 2).In(subject))]);
        return tail >= width / 2
            ? new Outcome.Fine(working)
            : new Outcome.Found((subject.Unit.IsBehindOthers ? ShortOfSeveral : Short).With(tail, Arg.AtLeast(width / 2)),
                Tail.Mend(subject, tail), Tail.Field(subject), working);
    }
}

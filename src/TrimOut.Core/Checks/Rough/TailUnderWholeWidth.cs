using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>The tail at the window is better as long as the unit is wide.</summary>
/// <remarks>
/// <para>Why: then it reaches either end, whatever changes until the units come.</para>
/// <para>To clear: pull more cable while the wall is open. Under half the width the other check speaks.</para>
/// </remarks>
public sealed class TailUnderWholeWidth : RunCheck
{
    private static readonly Message Short = new("The tail is {0}; the width is {1}.");
    private static readonly Message ShortOfSeveral = new("The tail is {0}; the way along the head to its far end is {1}.", "far-end");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("tail-under-whole-width", "Tail is shorter than the window", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice, "tail >= width; of one behind others the way along the head to its far end"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (Tail.Unknown(subject) is { } unknown)
            return unknown;
        var (tail, width) = Tail.Of(subject);
        if (tail < width / 2)
            return new Outcome.DoesNotApply();
        var working = Working.Of(Info.Source.Formula, () => [("tail", tail.In(subject)), ("width", width.In(subject))]);
        return tail >= width
            ? new Outcome.Fine(working)
            : new Outcome.Found((subject.Unit.IsBehindOthers ? ShortOfSeveral : Short).With(tail, width),
                Tail.Mend(subject, tail), Tail.Field(subject), working)
            {
                // Earlier releases held an outside mount against the opening alone.
                ToldOf = subject.Unit.PartWidth is { } part && part != width && !subject.Unit.IsBehindOthers
                    ? [new Outcome.Told(subject.Id, Short.With(tail, part))] : [],
            };
    }
}

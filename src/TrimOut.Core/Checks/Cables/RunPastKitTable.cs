using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>A home run is no longer than the maker's table allows for its cable.</summary>
/// <remarks>
/// <para>Why: the maker answers for units that are wired by the table, and for no others.</para>
/// <para>To clear: thicker cable, a shorter way, or a panel nearer to it. What voltage drop alone would allow is shown beside it; the tighter governs.</para>
/// </remarks>
public sealed class RunPastKitTable : RunCheck
{
    private static readonly Message TooLong = new("The run is {0} of {1}. {2}", "whole");
    private static readonly Message AtLeastTooLong = new("The run is at least {0} of {1}. {2}", "at-least");
    private static readonly Message PlannedTooLong = new("With the tails that are planned the run is {0} of {1}. {2}", "planned");
    private static readonly Message TableEnds = new("The kit's table ends at {0}.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("run-past-kit-table", "Run is longer than the maker's table", Severity.Stop, Phase.RoughIn,
        new Source(Source.MakersSheet,
            "legs + tail at window + tail at panel <= longest run of the table; tails not left yet as planned: the window's width, and " +
                "the tail at panels of the house"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (RunFigures.OnSharedCable(subject))
            return new Outcome.DoesNotApply();
        if (subject.Cable?.LongestRun is not { } longest)
            return NotChecked.Of(subject.Cable, CableTypeFacts.LongestRun, subject, RunFacts.Cable);
        if (RunFigures.Reckoned(subject, l => l > longest) is not { } reckoned)
            return RunFigures.UnknownLength(subject)!;
        var (length, from) = reckoned;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("length, one way", length.RunIn(subject)), ("longest run by the table", longest.RunIn(subject)),
            ("longest run by voltage drop", subject.Limits is { } also ? also.ByVolts.LimitIn(subject) : "not known"),
        ]);
        return length <= longest
            ? new Outcome.Fine(working)
            : new Outcome.Found(
                (from switch { Reckoned.Measured => TooLong, Reckoned.AtLeast => AtLeastTooLong, _ => PlannedTooLong }).With(
                    from == Reckoned.Planned ? Arg.Limit(length) : Arg.Run(length), Arg.Name(subject.Cable),
                    subject.Limits is { } limits ? RunFigures.BothLimits(limits) : TableEnds.With(Arg.Limit(longest))),
                RunFigures.Mend(subject), FieldRef.To(subject.Item, RunFacts.Cable), working);
    }
}

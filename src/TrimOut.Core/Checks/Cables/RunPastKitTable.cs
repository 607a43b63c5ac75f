using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks.Cables;

/// <summary>A home run is no longer than the maker's table allows for its cable.</summary>
/// <remarks>
/// <para>Why: the maker answers for units that are wired by the table, and for no others.</para>
/// <para>To clear: thicker cable, a shorter way, or a panel nearer to it. What voltage drop alone would allow is shown beside it; the tighter governs.</para>
/// </remarks>
public sealed class RunPastKitTable : RunCheck
{
    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("run-past-kit-table", "Run is longer than the kit's table", Severity.Stop, Phase.RoughIn,
        new Source(Source.MakersSheet, "legs + tail at window + tail at panel <= longest run of the table"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (RunFigures.OnSharedCable(subject))
            return new Outcome.DoesNotApply();
        if (subject.Cable?.LongestRun is not { } longest)
            return Unknown.Of(subject.Cable, CableTypeFacts.LongestRun, subject, RunFacts.Cable);
        var unknown = RunFigures.UnknownLength(subject);
        if (subject.AtLeast is not { } length || (unknown is not null && length <= longest))
            return unknown!;
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("length, one way", length.RunIn(subject)), ("longest run by the table", longest.RunIn(subject)),
            ("longest run by voltage drop", subject.Limits is { } also ? also.ByVolts.LimitIn(subject) : "not known"),
        ]);
        return length <= longest
            ? new Outcome.Fine(working)
            : new Outcome.Found(
                $"The run is {(unknown is null ? "" : "at least ")}{length.RunIn(subject)} of {subject.Cable.Name}. {(subject.Limits is { } limits ? RunFigures.BothLimits(subject, limits) : $"The kit's table ends at {longest.LimitIn(subject)}.")}",
                RunFigures.Mend(subject), FieldRef.To(subject.Item, RunFacts.Cable), working);
    }
}

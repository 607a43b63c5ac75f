using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Rough;

/// <summary>A cable carries the same label at both ends.</summary>
/// <remarks>
/// <para>Why: in the mechanical room thirty cables look alike; the label is all that tells which window one goes to.</para>
/// <para>To clear: write the same words at both ends, and here.</para>
/// </remarks>
public sealed class LabelEndsDiffer : RunCheck
{
    private static readonly Message EndsDiffer = new("It says \"{0}\" at the window and \"{1}\" in the mechanical room.");
    private static readonly Message ReadLoop = new("Find out which is right by reading the loop with this end shorted, then label both ends alike.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("label-ends-differ", "Labels of the two ends differ", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice, "label at window = label at panel"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.LabelAtWindow is not { } window)
            return NotChecked.Of(subject, RunFacts.LabelAtWindow);
        if (subject.LabelAtPanel is not { } panel)
            return NotChecked.Of(subject, RunFacts.LabelAtPanel);
        return string.Equals(window, panel, StringComparison.OrdinalIgnoreCase)
            ? new Outcome.Fine()
            : new Outcome.Found(EndsDiffer.With(Arg.Typed(window), Arg.Typed(panel)), ReadLoop, FieldRef.To(subject.Item, RunFacts.LabelAtPanel));
    }
}

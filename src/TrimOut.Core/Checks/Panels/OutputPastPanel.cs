using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>A run lands on an output that its panel has.</summary>
/// <remarks>
/// <para>Why: the panel map sends the next person to an output that is not there.</para>
/// <para>To clear: the right output, or the right panel type.</para>
/// </remarks>
public sealed class OutputPastPanel : RunCheck
{
    private static readonly Message NotThere = new("It lands on output {0}; {1} has {2}.");
    private static readonly Message LandElsewhere = new("Land it on an output that is there, or add a panel.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("output-past-panel", "Output is not on the panel", Severity.Stop, Phase.Power,
        new Source(Source.MakersSheet, "output <= outputs of the panel"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (Cables.RunFigures.OnSharedCable(subject))
            return new Outcome.DoesNotApply();
        if (subject.Panel is not { } panel)
            return NotChecked.Of(subject, RunFacts.Panel);
        if (subject.Output is not { } output)
            return NotChecked.Of(subject, RunFacts.Output);
        if (panel.Type?.Outputs is not { } outputs)
            return NotChecked.Of(panel.Type, PanelTypeFacts.Outputs, panel, PanelFacts.Type);
        return output <= outputs
            ? new Outcome.Fine()
            : new Outcome.Found(NotThere.With(output, Arg.Name(panel), outputs), LandElsewhere, FieldRef.To(subject.Item, RunFacts.Output));
    }
}

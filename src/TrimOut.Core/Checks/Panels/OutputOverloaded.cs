using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>One output can drive the unit on it.</summary>
/// <remarks>
/// <para>Why: an output that is asked for more switches off, and the unit stops as if it were broken.</para>
/// <para>To clear: a panel with stronger outputs, or a kind that draws less.</para>
/// </remarks>
public sealed class OutputOverloaded : RunCheck
{
    private static readonly Message DrawsMore = new("It draws {0}; an output of {1} gives {2}.");
    private static readonly Message LandElsewhere = new("Land it on a panel with stronger outputs, or ask the maker.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("output-overloaded", "Unit draws more than its output gives", Severity.Stop, Phase.Power,
        new Source(Source.MakersSheet, "larger of starting and running current <= per output"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (Cables.RunFigures.OnSharedCable(subject))
            return new Outcome.DoesNotApply();
        if (Load.Of(subject.Unit) is not { } draws)
            return NotChecked.Of(subject.Unit.Kind, CoveringKindFacts.StartingCurrent, subject.Unit, UnitFacts.Kind);
        if (subject.Panel is not { } panel)
            return NotChecked.Of(subject, RunFacts.Panel);
        if (panel.Type?.OutputCurrent is not { } gives)
            return NotChecked.Of(panel.Type, PanelTypeFacts.OutputCurrent, panel, PanelFacts.Type);
        var working = Working.Of(Info.Source.Formula, () => [("draws", draws.ToString()), ("per output", gives.ToString())]);
        return draws <= gives
            ? new Outcome.Fine(working)
            : new Outcome.Found(DrawsMore.With(draws, Arg.Name(panel), gives), LandElsewhere, FieldRef.To(subject.Item, RunFacts.Panel), working);
    }
}

using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
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
    private static readonly Message NoneGives = new("It draws {0}; no output of any panel gives more than {1}.");
    private static readonly Message StrongerPanel = new("Plan a panel with stronger outputs, or ask the maker.");
    private static readonly Message LandElsewhere = new("Land it on a panel with stronger outputs, or ask the maker.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("output-overloaded", "Unit draws more than its output gives", Severity.Stop, Phase.RoughIn,
        new Source(Source.MakersSheet, "larger of starting and running current <= per output; until it is landed, of the strongest panel of the house for a "
            + "stop, of every one for a pass"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (Cables.RunFigures.OnSharedCable(subject))
            return new Outcome.DoesNotApply();
        if (Load.Of(subject.Unit) is not { } draws)
            return NotChecked.Of(subject.Unit.Kind, CoveringKindFacts.StartingCurrent, subject.Unit, UnitFacts.Kind);
        if (subject.Panel is not { } panel)
            return BeforeLanding(subject, draws);
        if (panel.Type?.OutputCurrent is not { } gives)
            return NotChecked.Of(panel.Type, PanelTypeFacts.OutputCurrent, panel, PanelFacts.Type);
        var working = Working.Of(Info.Source.Formula, () => [("draws", draws.ToString()), ("per output", gives.ToString())]);
        return draws <= gives
            ? new Outcome.Fine(working)
            : new Outcome.Found(DrawsMore.With(draws, Arg.Name(panel), gives), LandElsewhere, FieldRef.To(subject.Item, RunFacts.Panel), working);
    }

    /// <summary>What no panel of the house can drive, and what each of them can, need not wait until it is landed.</summary>
    private Outcome BeforeLanding(HomeRun run, Current draws)
    {
        var gives = run.House.Panels.Select(p => p.Type?.OutputCurrent).ToList();
        if (gives.Count == 0 || gives.Any(g => g is null))
            return NotChecked.Of(run, RunFacts.Panel);
        var (least, most) = (gives.Min(g => g!.Value), gives.Max(g => g!.Value));
        if (draws <= least)
        {
            return new Outcome.Fine(Working.Of(Info.Source.Formula, () =>
                [("draws", draws.ToString()), ("per output, of the weakest panel", least.ToString())]));
        }
        if (draws <= most)
            return NotChecked.Of(run, RunFacts.Panel);
        return new Outcome.Found(NoneGives.With(draws, most), StrongerPanel, FieldRef.To(run.House.Panels[0].Item, PanelFacts.Type),
            Working.Of(Info.Source.Formula, () => [("draws", draws.ToString()), ("per output, of the strongest panel", most.ToString())]));
    }
}

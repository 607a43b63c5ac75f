using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>A panel can start together all units that one press moves: a group, all that a remote moves, a preset, or a preset of one name on several
/// remotes.</summary>
/// <remarks>
/// <para>Why: a panel that is pulled down stops all of them half way, and nobody thinks of the panel.</para>
/// <para>To clear: spread the units of the group over two panels, or let them move one after the other.</para>
/// </remarks>
public sealed class PanelOverloaded() : Check<Panel>(Subjects.Panels)
{
    private static readonly Message PastPanel = new("The {0} units of {1} on {2} draw {3} when they start together; it gives {4}.");
    private static readonly Message OnePastPanel = new("{0} on {1} draws {2} when it starts; the panel gives {3}.", "one");
    private static readonly Message StrongerPanel = new("Land it on a panel that gives more, or ask the maker.");
    private static readonly Message Spread = new("Spread them over two panels, or let them start one after the other.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("panel-overloaded", "Units that move together overload a panel", Severity.Stop, Phase.RoughIn,
        new Source(Source.MakersSheet,
            "sum of the larger of starting and running current, over the units on the panel that one press moves, <= all together; " +
                "the only panel of a house is judged with the units that are to be landed yet"));

    /// <inheritdoc/>
    public override Outcome Judge(Panel subject)
    {
        Unit[] fed = [.. subject.House.UnitsAt(Lookups.UnitsFedByPanel, subject.Id)];
        if (Load.Largest(fed) is not { } load)
            return new Outcome.DoesNotApply();
        if (subject.Type?.TotalCurrent is not { } most)
            return NotChecked.Of(subject.Type, PanelTypeFacts.TotalCurrent, subject, PanelFacts.Type);
        var working = Working.Of(Info.Source.Formula, () =>
        [
            ("moves together", load.Name.For(new Reader(subject.House))), ("units", NumberText.Plain(load.Units)), ("peak", load.Peak.ToString()),
            ("all together", most.ToString()),
        ]);
        if (load.Peak > most && load.Units == 1)
        {
            return new Outcome.Found(OnePastPanel.With(Load.NamesPast(fed, most, load), Arg.Name(subject), load.Peak, most),
                StrongerPanel, FieldRef.To(subject.Item, PanelFacts.Type), working);
        }
        if (load.Peak > most)
        {
            return new Outcome.Found(PastPanel.With(load.Units, Load.NamesPast(fed, most, load), Arg.Name(subject), load.Peak, most),
                Spread, FieldRef.To(subject.Item, PanelFacts.Type), working);
        }
        return fed.FirstOrDefault(u => Load.Of(u) is null) is { } unknown
            ? NotChecked.Of(unknown.Kind, CoveringKindFacts.StartingCurrent, unknown, UnitFacts.Kind)
            : new Outcome.Fine(working);
    }
}

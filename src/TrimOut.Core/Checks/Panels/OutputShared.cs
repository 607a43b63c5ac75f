using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>No more runs lie on an output than the sheet allows, those of units that are said to need none too.</summary>
/// <remarks>
/// <para>Why: two motors that start together on one output pull it down, and neither moves.</para>
/// <para>To clear: land one of them on a free output.</para>
/// </remarks>
public sealed class OutputShared : RunCheck
{
    private static readonly Message Shared = new("{0} output {1} feeds {2}; the sheet allows {3}.");
    private static readonly Message LandElsewhere = new("Land one of them on a free output.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("output-shared", "Too many runs on one output", Severity.Stop, Phase.Power,
        new Source(Source.MakersSheet, "runs on an output <= units per output"));

    /// <inheritdoc/>
    public override Outcome Judge(HomeRun subject)
    {
        if (subject.Panel is not { } panel || subject.Output is not { } output)
            return new Outcome.DoesNotApply();
        if (panel.Type?.UnitsPerOutput is not { } most)
            return NotChecked.Of(panel.Type, PanelTypeFacts.UnitsPerOutput, panel, PanelFacts.Type);
        var there = subject.House.Look(Lookups.LandedAtOutput, Load.OutputKey((panel.Id, output)));
        return there.Count <= most
            ? new Outcome.Fine()
            : new Outcome.Found(Shared.With(Arg.Name(panel), output, Arg.All(there.Select(u => NameOf(subject.House, u))), most), LandElsewhere,
                FieldRef.To(subject.Item, RunFacts.Output));
    }

    /// <summary>A unit, or the window of one that is left out.</summary>
    private static Arg NameOf(House house, string unit) => Arg.Name(house.FindUnit(unit)?.Item ?? house.Find(house.Find(unit)!.Under)!);
}

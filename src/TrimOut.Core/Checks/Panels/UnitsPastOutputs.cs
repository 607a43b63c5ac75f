using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Panels;

/// <summary>There are outputs for all units that a panel feeds.</summary>
/// <remarks>
/// <para>Why: the eleventh unit of a ten-output panel is found when the last cable is landed.</para>
/// <para>To clear: plan another panel, with its place and its mains, while there is a wall to put it on.</para>
/// </remarks>
public sealed class UnitsPastOutputs : HouseCheck
{
    private static readonly Message PanelForOne = new("a panel; {0} unit needs an output");
    private static readonly Message PanelForMany = new("a panel; {0} units need outputs");
    private static readonly Message PastOnePanel = new("{0} units need an output; {1} panel has {2}.");
    private static readonly Message PastPanels = new("{0} units need an output; {1} panels have {2}.");
    private static readonly Message AddPanel = new("Add a panel for {0} more, and spread the units over all of them.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("units-past-outputs", "More units than panel outputs", Severity.Stop, Phase.RoughIn,
        new Source(Source.MakersSheet, "units fed by panels <= sum of outputs x units per output"));

    /// <inheritdoc/>
    public override IEnumerable<CheckResult> Run(House house)
    {
        var units = house.Runs.Length;
        if (units > 0)
            yield return Result(new JobItself(house), Judge(house, units));
    }

    private Outcome Judge(House house, int units)
    {
        if (house.Panels.IsEmpty)
            return new Outcome.NotChecked((units == 1 ? PanelForOne : PanelForMany).With(units));
        var places = 0;
        foreach (var panel in house.Panels)
        {
            if (panel.Type is not { Outputs: { } outputs } type)
                return NotChecked.Of(panel.Type, PanelTypeFacts.Outputs, panel, PanelFacts.Type);
            if (type.UnitsPerOutput is not { } each)
                return NotChecked.Of(type, PanelTypeFacts.UnitsPerOutput);
            places += outputs * each;
        }
        var working = Working.Of(Info.Source.Formula, () => [("units", NumberText.Plain(units)), ("panels", NumberText.Plain(house.Panels.Length)),
            ("places", NumberText.Plain(places))]);
        return units <= places
            ? new Outcome.Fine(working)
            : new Outcome.Found((house.Panels.Length == 1 ? PastOnePanel : PastPanels).With(units, house.Panels.Length, places),
                AddPanel.With(units - places), FieldRef.To(house.Panels[0].Item, PanelFacts.Type), working);
    }
}

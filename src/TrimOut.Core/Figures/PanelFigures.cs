using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Figures;

/// <summary>The load of every group, preset and unit on a panel, and what the checks worked out for it.</summary>
public static class PanelFigures
{
    /// <summary>The figures of a panel.</summary>
    public static ImmutableArray<Figure> Of(Panel panel)
    {
        var loads = Load.On<ItemRef>(panel.House, Load.PanelOf).Where(l => l.Place.Id == panel.Id).Select(l => l.Load).OrderByDescending(l => l.Peak).ToList();
        var outputs = Load.On(panel.House, Load.OutputOf).Where(l => l.Place.Panel == panel.Id && l.Load.Units > 1).OrderBy(l => l.Place.Output).ToList();
        return
        [
            .. CheckFigures.Of(panel.House, panel),
            .. loads.Select(l => Made($"Load of {l.Name}", l, panel, PanelTypeFacts.TotalCurrent, new PanelOverloaded().Info.Source)),
            .. outputs.Select(l =>
                Made($"Output {NumberText.Plain(l.Place.Output)}, {l.Load.Name}", l.Load, panel, PanelTypeFacts.OutputCurrent,
                    new OutputOverloadedTogether().Info.Source)),
        ];
    }

    private static Figure Made(string name, Load load, Panel panel, Fact<Current> most, Source source) =>
        new(name, load.Peak.ToString(), Working.Of(source.Formula, () =>
        [
            ("units on the panel", NumberText.Plain(load.Units)), ("together", load.Peak.ToString()),
            (most.Label.ToLowerInvariant(), panel.Type?.Show(most) is { Length: > 0 } shown ? shown : "not known"),
        ]), source, [PanelFacts.Type]);
}

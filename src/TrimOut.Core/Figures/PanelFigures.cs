using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Figures;

/// <summary>The load of every group, preset and unit on a panel, and what the checks worked out for it.</summary>
public static class PanelFigures
{
    /// <summary>The figures of a panel.</summary>
    public static ImmutableArray<Figure> Of(Panel panel)
    {
        var (loads, by) = UncheckedValues.Read(panel.House, house => Loads(house.Panels.FirstOrDefault(p => p.Id == panel.Id) ?? panel));
        return [.. CheckFigures.Of(panel.House, panel), .. loads.Select(l => by.Count == 0 ? l
            : l with { Value = UncheckedValues.Marked(l.Value, true), Unchecked = [.. by] })];
    }

    private static List<Figure> Loads(Panel panel)
    {
        var (house, reader) = (panel.House, new Reader(panel.House));
        var fed = house.UnitsAt(Lookups.UnitsFedByPanel, panel.Id).ToList();
        var outputs = fed.Select(u => Load.OutputOf(u.Run!)).OfType<(string Panel, int Output)>().Distinct().OrderBy(o => o.Output)
            .SelectMany(o => Load.Together([.. house.UnitsAt(Lookups.UnitsByOutput, Load.OutputKey(o))]).Where(l => l.Units > 1)
                .Select(l => (o.Output, Load: l)));
        List<Figure> loads =
        [
            .. Load.Together(fed).OrderByDescending(l => l.Peak)
                .Select(l => Made($"Load of {l.Name.For(reader)}", l, panel, PanelTypeFacts.TotalCurrent, new PanelOverloaded().Info.Source)),
            .. outputs.Select(l => Made($"Output {NumberText.Plain(l.Output)}, {l.Load.Name.For(reader)}", l.Load, panel, PanelTypeFacts.OutputCurrent,
                new OutputOverloadedTogether().Info.Source)),
        ];
        foreach (var load in loads)
            _ = load.Working.Inputs;
        return loads;
    }

    private static Figure Made(string name, Load load, Panel panel, Fact<Current> most, Source source) =>
        new(name, load.Peak.ToString(), Working.Of(source.Formula, () =>
        [("units on the panel", NumberText.Plain(load.Units)), ("together", load.Peak.ToString()),
            (most.Label.ToLowerInvariant(), panel.Type is { } type && type.Show(most) is { Length: > 0 } shown
                ? UncheckedValues.Marked(shown, !type.IsChecked(most)) : "not known")]), source, [PanelFacts.Type]);
}

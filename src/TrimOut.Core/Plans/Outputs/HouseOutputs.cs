using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Outputs;

/// <summary>A house's runs and panels as an order for an output plan.</summary>
public static class HouseOutputs
{
    /// <summary>
    /// The order: panels whose number of outputs is known, and all runs but those landed on other panels and those that branch off another run.
    /// </summary>
    /// <param name="house">The house.</param>
    /// <param name="mayMove">Whether landed runs may be moved.</param>
    /// <remarks>
    /// Units move together by their group and by every preset that has a position of them. Loads are starting currents where
    /// every kind's sheet gives one; where one is missing each unit counts the same.
    /// </remarks>
    public static OutputOrder Order(House house, bool mayMove = false)
    {
        var panels = house.Panels.Where(p => p.Type?.Outputs is not null).ToArray();
        var ids = panels.Select(p => p.Id).ToHashSet();
        var runs = house.Runs.Where(r => r.BranchesOff is null && (Place(r) is not { } at || ids.Contains(at.Panel))).ToArray();
        var presets = house.Remotes.SelectMany(r => r.Presets)
            .SelectMany(p => p.Positions.Select(at => (Unit: at.Unit.Id, Preset: $"preset {p.Id}")))
            .ToLookup(p => p.Unit, p => p.Preset);
        var known = runs.All(r => r.Unit.Kind?.StartingCurrent is not null);
        return new OutputOrder(
            [.. panels.Select(p => new PanelToFill(p.Id, p.Type!.Outputs!.Value))],
            [.. runs.Select(r => new RunToLand(
                r.Id,
                r.Unit.Window.RoomId,
                [.. presets[r.Unit.Id].Prepend(Group(r.Unit)).OfType<string>()],
                known ? Milliamperes(r.Unit.Kind!.StartingCurrent!.Value) : 1,
                Place(r)))],
            mayMove,
            known ? "mA" : OutputOrder.Units);
    }

    private static string? Group(Unit unit) =>
        unit.Item.Get(UnitFacts.Group) is { } group ? $"group {ShownText.Key(group).ToUpperInvariant()}" : null;

    private static OutputPlace? Place(HomeRun run) => run is { Panel: { } panel, Output: { } output } ? new(panel.Id, output) : null;

    private static int Milliamperes(Current current) => (int)Math.Ceiling(current.Amperes * 1000);
}

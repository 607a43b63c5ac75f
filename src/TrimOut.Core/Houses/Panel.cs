using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>A supply in the mechanical room.</summary>
public sealed class Panel(House house, Item item) : Subject(house, item)
{
    /// <summary>What the maker's sheet says about it; null while no type is chosen.</summary>
    public PanelType? Type => Target(PanelFacts.Type) is { } type ? new PanelType(House, type) : null;

    /// <summary>The runs that land on it, by output.</summary>
    public IEnumerable<HomeRun> Runs => House.UnitsAt(Lookups.UnitsByPanel, Id).Select(u => u.Run!).OrderBy(r => r.Output ?? int.MaxValue);

    /// <summary>The run on an output; null when it is free.</summary>
    public HomeRun? RunAt(int output) => Runs.FirstOrDefault(r => r.Output == output);
}

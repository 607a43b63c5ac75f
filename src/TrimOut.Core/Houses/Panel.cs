using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>A supply in the mechanical room.</summary>
public sealed class Panel(House house, Item item) : Subject(house, item)
{
    /// <summary>What the maker's sheet says about it; null while no type is chosen.</summary>
    public PanelType? Type => Target(PanelFacts.Type) is { } type ? new PanelType(House, type) : null;

    /// <summary>The runs that land on it, by output.</summary>
    public IEnumerable<HomeRun> Runs => House.UnitsAt(Lookups.UnitsByPanel, Id).Select(u => u.Run!).OrderBy(r => r.Output ?? int.MaxValue);

    /// <summary>
    /// The runs that are landed on it though their unit is said to need none, by output: they are live all the same, and their outputs are not free.
    /// </summary>
    public IEnumerable<(Item Run, int Output)> NotWanted => House.LandedNotWanted.Where(n => n.Panel == Id).Select(n => (n.Run, n.Output));

    /// <summary>The run on an output; null when it is free.</summary>
    public HomeRun? RunAt(int output) => Runs.FirstOrDefault(r => r.Output == output);

    /// <summary>
    /// The numbers of its outputs, from 1: those of its sheet, and behind them each that a cable is said to land on and that the sheet does not have;
    /// where no sheet says how many there are, up to the last that is used.
    /// </summary>
    public IReadOnlyList<int> OutputNumbers
    {
        get
        {
            var used = Runs.Select(r => r.Output ?? 0).Concat(NotWanted.Select(n => n.Output)).Where(o => o > 0).Distinct().Order().ToList();
            var count = Type?.Outputs ?? used.LastOrDefault();
            return [.. Enumerable.Range(1, count), .. used.Where(o => o > count)];
        }
    }

    /// <summary>Whether its sheet says that it has no output of this number.</summary>
    /// <param name="output">The number, from 1.</param>
    public bool HasNo(int output) => Type?.Outputs < output;
}

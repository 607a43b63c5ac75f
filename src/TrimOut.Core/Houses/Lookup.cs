using System.Collections.Immutable;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Houses;

/// <summary>Who points at whom: for each key what is under it. Made once for a state of a house, when it is first asked for.</summary>
/// <remarks>
/// What making it read is recorded source by source, and so is each look into it, under its key: when a value that it was made of
/// changes, only that source is read again, and only whoever looked under a key that holds something else now is worked out again.
/// </remarks>
internal abstract class Lookup(int number, bool anyCase, bool neighbors)
{
    /// <summary>Its number among all, by which it is known in keys of reads.</summary>
    public int Number => number;

    /// <summary>Whether keys that a person takes for one name are one key.</summary>
    public bool AnyCase => anyCase;

    /// <summary>Whether it is a list of which somebody asks what stands before a key.</summary>
    public bool Neighbors => neighbors;

    /// <summary>All of them, each after those that it is made of.</summary>
    public static ImmutableArray<Lookup> All { get; } =
    [
        Lookups.Units, Lookups.Runs, Lookups.UnitsByPanel, Lookups.UnitsByHub, Lookups.RemotesByHub, Lookups.RemotesByUnit, Lookups.WindowsByTag,
        Lookups.WindowsByRoom, Lookups.UnitsByHubName, Lookups.UnitsByLabel, Lookups.UsersOfPart, Lookups.NeedsOfCable, Lookups.UnitsFedByPanel,
        Lookups.UnitsByOutput, Lookups.PresetsByUnit, Lookups.UnitsByNameSketch, Lookups.LandedAtOutput,
        Lookups.UnitsThroughFloor, Lookups.ByName, Lookups.PanelsByBreaker, Lookups.PanelsByElectrician,
        Lookups.LastMeasures, Lookups.UnitsByCloth, Lookups.UnitsByRemote, Lookups.UnitsByPreset, Lookups.CoveredWindows,
    ];

    /// <summary>The ids of what puts something into it, in their order.</summary>
    public abstract IEnumerable<string> Sources(House house);

    /// <summary>The keys under which one of them puts something.</summary>
    public abstract IEnumerable<string> KeysFrom(House house, string source);

    /// <summary>The key as it is recorded.</summary>
    public ReadKey KeyOf(string key) => ReadKey.Of(this, anyCase ? ShownText.Key(key).ToUpperInvariant() : key);

    /// <summary>How keys are held against each other.</summary>
    public StringComparer Comparer => anyCase ? SameName.Comparer : StringComparer.Ordinal;
}

/// <summary>A lookup with what is under its keys.</summary>
/// <typeparam name="T">What is under a key: an id, or an id with a figure.</typeparam>
/// <param name="number">Its number.</param>
/// <param name="sources">The ids of what puts something into it, in their order.</param>
/// <param name="pairs">What one of them puts into it, and under which keys.</param>
/// <param name="anyCase">Whether keys that a person takes for one name are one key.</param>
/// <param name="neighbors">Whether it is a list of which somebody asks what stands before a key.</param>
internal sealed class Lookup<T>(int number, Func<House, IEnumerable<string>> sources, Func<House, string, IEnumerable<(string? Key, T Value)>> pairs,
    bool anyCase = false, bool neighbors = false)
    : Lookup(number, anyCase, neighbors)
    where T : IEquatable<T>
{
    /// <summary>What each of its sources puts into it.</summary>
    public Map<(string Key, T Value)[]> Map { get; } = new(sources, (house, id) =>
        [.. pairs(house, id).Where(p => p.Key is not null).Select(p => (p.Key!, p.Value))]);

    /// <inheritdoc/>
    public override IEnumerable<string> Sources(House house) => Map.Sources(house);

    /// <inheritdoc/>
    public override IEnumerable<string> KeysFrom(House house, string source) => Map.Part(house, source).Select(p => p.Key);
}

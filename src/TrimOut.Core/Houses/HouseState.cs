using System.Collections.Immutable;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Houses;

/// <summary>What all views of one state of a house share: its items, their shape, and who points at whom.</summary>
internal sealed class HouseState(ItemTable items, Lazy<HouseShape> shape, HouseStep? step)
{
    private readonly LookupMade?[] _lookups = new LookupMade?[Lookup.All.Length];
    private (ImmutableArray<IReadSets> Of, ReadIndex Index)? _index;
    private HashSet<long>? _uncheckedValues;

    /// <summary>All items.</summary>
    public ItemTable Items => items;

    /// <summary>Which of them are in the house, and in what order.</summary>
    public HouseShape Shape => shape.Value;

    /// <summary>What is read where a value of a sheet that nobody checked is read; worked out once.</summary>
    public IReadOnlySet<long> UncheckedValues => _uncheckedValues ??= Kits.UncheckedValues.KeysIn(items);

    /// <summary>A lookup as it is in this state.</summary>
    public LookupMade<T> Of<T>(Lookup<T> lookup)
        where T : IEquatable<T> => (LookupMade<T>)(_lookups[lookup.Number] ??= LookupMade<T>.Of(lookup, this));

    /// <summary>The state after a step.</summary>
    public HouseState After(ItemTable after, HouseStep step) =>
        new(after, step.Edits.Any(e => HouseShape.IsChangedBy(e, after)) ? new(() => HouseShape.Of(after)) : shape, step);

    /// <summary>What reads otherwise in this state than in an earlier one of the same house; null when the two can't be compared piece by piece.</summary>
    /// <remarks>Lookups of the earlier state are taken over, worked out again where they read something else.</remarks>
    public HashSet<long>? OtherThanIn(HouseState before)
    {
        var changed = new HashSet<long>();
        if (step is not null && ReferenceEquals(step.Before, before.Items))
            step.AddChanged(items, changed);
        else if (!AddChanged(before, changed))
            return null;
        if (!ReferenceEquals(Shape, before.Shape))
            Shape.AddOtherThanIn(before.Shape, items, before.Items, changed);
        if (changed.Count > 0)
            changed.Add(ReadKey.Everything.Value);
        // After a step that changes nothing too: the next one is held against the lookups of this state.
        TakeLookups(before, changed);
        return changed;
    }

    private void TakeLookups(HouseState before, HashSet<long> changed)
    {
        var index = before.Index();
        var touched = new List<int>[_lookups.Length];
        foreach (var lookup in Lookup.All)
        {
            touched[lookup.Number] = [];
            if (before._lookups[lookup.Number] is { } was)
                _lookups[lookup.Number] = was.After(this, changed, touched[lookup.Number] = index.TouchedBy(changed, lookup.Number));
        }
        var sets = Sets();
        _index = (sets, index.After(sets, touched));
    }

    /// <summary>Who read what in making the lookups that are there.</summary>
    private ReadIndex Index()
    {
        var sets = Sets();
        if (_index is not { } known || !known.Of.AsSpan().SequenceEqual(sets.AsSpan()))
            _index = known = (sets, new ReadIndex(sets));
        return known.Index;
    }

    private ImmutableArray<IReadSets> Sets() => [.. _lookups.Select(l => l?.Reads ?? NoReads.One)];

    private bool AddChanged(HouseState before, HashSet<long> changed)
    {
        foreach (var (was, now) in items.OtherThanIn(before.Items))
        {
            if (was is null)
                HouseStep.AddNew(now, changed);
            else if (was.Id != now.Id || was.Kind != now.Kind || was.Under != now.Under)
                return false;
            else
                HouseStep.AddFields(now, now.FieldsOtherThanIn(was), changed);
        }
        for (var place = items.Count; place < before.Items.Count; place++)
            changed.Add(ReadKey.Presence(place).Value);
        return true;
    }

    private sealed class NoReads : IReadSets
    {
        public static readonly NoReads One = new();

        public object Sources => this;

        public int Count => 0;

        public ReadOnlySpan<long> Reads(int at) => [];

        public int[]? MovedFrom(object sources) => null;
    }
}

namespace TrimOut.Core.Houses;

/// <summary>What all views of one state of a house share: its items, their shape, and who points at whom.</summary>
internal sealed class HouseState(ItemTable items, Lazy<HouseShape> shape, HouseStep? step)
{
    private readonly Lookup.Made?[] _lookups = new Lookup.Made?[Lookup.Count];

    /// <summary>All items.</summary>
    public ItemTable Items => items;

    /// <summary>Which of them are in the house, and in what order.</summary>
    public HouseShape Shape => shape.Value;

    /// <summary>How it came from the state before it; null when it was folded from its whole history.</summary>
    public HouseStep? Step => step;

    /// <summary>A lookup as it is in this state.</summary>
    public Lookup.Made Of(Lookup lookup) => _lookups[lookup.Number] ??= lookup.For(new House(this));

    /// <summary>The state after a step.</summary>
    public HouseState After(ItemTable after, HouseStep step) =>
        new(after, step.Edits.Any(e => HouseShape.IsChangedBy(e, after)) ? new(() => HouseShape.Of(after)) : shape, step);

    /// <summary>What reads otherwise in this state than in an earlier one of the same house; null when the two can't be compared piece by piece.</summary>
    /// <remarks>Lookups of the earlier state that were made of nothing that changed are taken over.</remarks>
    public HashSet<long>? OtherThanIn(HouseState before)
    {
        var changed = new HashSet<long>();
        if (step is not null && ReferenceEquals(step.Before, before.Items))
            step.AddChanged(items, changed);
        else if (!AddChanged(before, changed))
            return null;
        if (!ReferenceEquals(Shape, before.Shape))
            Shape.AddOtherThanIn(before.Shape, items, before.Items, changed);
        if (changed.Count == 0)
            return changed;
        changed.Add(ReadKey.Everything.Value);
        foreach (var lookup in Lookup.All)
        {
            if (before._lookups[lookup.Number] is not { } was)
                continue;
            if (was.IsTouchedBy(changed))
                Of(lookup).AddOtherThanIn(was, changed);
            else
                _lookups[lookup.Number] ??= was;
        }
        return changed;
    }

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
}

using System.Collections.Frozen;
using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Houses;

/// <summary>Where an item of one kind keeps the fields that this version knows: a number for each, so that reading one is one look into an array.</summary>
internal sealed class FieldSlots
{
    private static readonly FieldSlots[] ByKind = [.. Enum.GetValues<ItemKind>().Select(k => new FieldSlots(k))];

    private readonly FrozenDictionary<string, int> _slots;

    private FieldSlots(ItemKind kind)
    {
        var facts = FactTable.Of(kind);
        Fields =
        [
            Item.RemovedField,
            .. facts.Where(f => !f.IsKeyed).Select(f => f.Name),
            .. facts.Where(f => f.IsReading).SelectMany(f => new[]
                { Companion.Meter(f.Name), Companion.Leads(f.Name), Companion.CableAt(f.Name), Companion.MeterStep(f.Name) }),
            .. FactTable.IsKit(kind) ? facts.Select(f => Companion.Checked(f.Name)) : [],
            .. facts.Any(f => f.Name == StepMark.FactName) ? StepList.All.Where(s => s.Subject == kind).Select(s => s.Field) : [],
        ];
        _slots = Fields.Select((field, at) => (field, at)).ToFrozenDictionary(f => f.field, f => f.at, StringComparer.Ordinal);
    }

    /// <summary>The fields, each at the place of its number.</summary>
    public ImmutableArray<string> Fields { get; }

    /// <summary>The fields of items of a kind.</summary>
    public static FieldSlots Of(ItemKind kind) => ByKind[(int)kind];

    /// <summary>The number of a field; -1 for one that has none.</summary>
    public int Find(string field) => _slots.TryGetValue(field, out var slot) ? slot : -1;
}

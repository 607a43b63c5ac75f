using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Houses;

/// <summary>How a house came from the one before it, so that what was worked out for that one can be kept.</summary>
/// <param name="Before">The items of the house before.</param>
/// <param name="Edits">What was done to them.</param>
internal sealed record HouseStep(ItemTable Before, ImmutableArray<Edit> Edits)
{
    /// <summary>What reads otherwise after it, besides the shape of the house.</summary>
    public void AddChanged(ItemTable after, HashSet<long> changed)
    {
        foreach (var edit in Edits)
        {
            if (edit is Edit.Add add && after.Find(add.Item) is { } added)
                AddNew(added, changed);
            else if (edit is Edit.Put put && after.Find(put.Item) is { } item)
                AddFields(item, [put.Field], changed);
        }
    }

    /// <summary>A new item: whoever looked for it in vain finds it now.</summary>
    public static void AddNew(Item item, HashSet<long> changed) => changed.Add(ReadKey.NoSuch(item.Id).Value);

    /// <summary>Fields that have other values.</summary>
    public static void AddFields(Item item, IEnumerable<string> fields, HashSet<long> changed)
    {
        foreach (var field in fields)
        {
            changed.Add(ReadKey.Field(item, field).Value);
            changed.Add(ReadKey.AllFields(item).Value);
            if (FactTable.Find(item.Kind, field) is { IsKeyed: true } keyed)
                changed.Add(ReadKey.AllOf(item, keyed).Value);
        }
    }
}

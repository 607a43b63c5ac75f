using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>What a step from one house to the next may have changed for the checks.</summary>
internal sealed class Touched
{
    /// <summary>Facts of the house, its panels and its kit that any local check may look at: when one of these changes, everything is judged again.</summary>
    private static readonly HashSet<Fact> Shared =
    [
        HouseFacts.Units, HouseFacts.Dwelling, HouseFacts.ConductorTemperature, HouseFacts.CableAllowance, HouseFacts.PanelTail,
        HouseFacts.SpreadLimit, HouseFacts.SquareLimit, HouseFacts.PassLimit, PanelFacts.Type, PanelFacts.Name,
        // Whether a window or a unit is on the walk at all, and where.
        WindowFacts.Room, WindowFacts.Covered, UnitFacts.Power, UnitFacts.Position, RoomFacts.WalkingOrder,
        .. FactTable.All.Where(f => FactTable.IsKit(f.Subject)),
    ];

    private Touched(ImmutableArray<Subject> subjects, HashSet<string> items, HashSet<Fact> facts) => (Subjects, Items, Facts) = (subjects, items, facts);

    /// <summary>Windows, units, runs, panels and the house that local checks judge again.</summary>
    public ImmutableArray<Subject> Subjects { get; }

    /// <summary>Items that have other values.</summary>
    public HashSet<string> Items { get; }

    /// <summary>The facts that these values are of.</summary>
    public HashSet<Fact> Facts { get; }

    /// <summary>What a step touched; null when everything is to be judged again.</summary>
    public static Touched? By(HouseStep step, House house)
    {
        var (subjects, items, facts) = (new Dictionary<string, Subject>(), new HashSet<string>(), new HashSet<Fact>());
        foreach (var edit in step.Edits)
        {
            if (edit is Edit.Add { Kind: ItemKind.Punch or ItemKind.Waiver or ItemKind.Preset })
                continue;
            if (edit is not Edit.Put { Field: not Item.RemovedField } put)
                return null;
            if (house.Find(put.Item) is not { } item)
                continue;
            items.Add(item.Id);
            var (field, companion) = put.Field.IndexOf('#', StringComparison.Ordinal) is > 0 and var at ? (put.Field[..at], true) : (put.Field, false);
            if (FactTable.Find(item.Kind, field) is { } fact)
            {
                if (!companion && Shared.Contains(fact))
                    return null;
                facts.Add(fact);
            }
            foreach (var subject in Family(house, item, put.Field))
                subjects[subject.Id] = subject;
        }
        return new Touched([.. subjects.Values], items, facts);
    }

    private static IEnumerable<Subject> Family(House house, Item item, string field) => item.Kind switch
    {
        ItemKind.Window => Family(house.FindWindow(item.Id)),
        ItemKind.Unit => Family(house.FindWindow(item.Under)),
        ItemKind.Run or ItemKind.Leg when house.Find(item.Under) is { } above => Family(house, above, field),
        ItemKind.Remote when field.IndexOf(':', StringComparison.Ordinal) is > 0 and var at && house.Find(field[(at + 1)..]) is { Kind: ItemKind.Unit } unit => Family(house, unit, field),
        ItemKind.Panel when house.FindPanel(item.Id) is { } panel => [panel],
        ItemKind.House => [new JobItself(house)],
        _ => [],
    };

    private static IEnumerable<Subject> Family(Window? window)
    {
        if (window is null)
            yield break;
        yield return window;
        foreach (var unit in window.Units)
        {
            yield return unit;
            if (unit.Run is { } run)
                yield return run;
        }
    }
}

using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>One line of values from a script: what it is about, which detail, and the value, with tabs between.</summary>
public static class SetLine
{
    /// <summary>In place of a detail: what is named is added.</summary>
    public const string New = "new";

    /// <summary>In place of a detail of a room: all that is in it goes into another one.</summary>
    public const string MergeInto = "merge-into";

    private const string LegWord = "leg ";

    /// <summary>The change that a line wants.</summary>
    /// <param name="house">The house.</param>
    /// <param name="line">The line.</param>
    /// <param name="today">Which day it is, for a day that is said from there; null where that is not known.</param>
    public static Result<Draft> Read(House house, string line, DateOnly? today = null)
    {
        if (line.Split('\t', 3) is not [var about, var detail, var value])
            return new Refusal("Write tag, detail and value with a tab between.");
        if (SameName.Comparer.Equals(detail.Trim(), New))
            return Add(house, about.Trim(), value, today);
        return ItemsNamed.Find(house, about).Then(items => Put(house, [.. items], detail.Trim(), value, today));
    }

    private static Result<Draft> Put(House house, IReadOnlyList<Item> items, string detail, string value, DateOnly? today)
    {
        if (items is [{ Kind: ItemKind.Room } room] && detail == MergeInto)
        {
            return RoomNames.Read(value.Trim(), house).Then(into => into.Id is { } right
                ? ArrangeRooms.Merge(house.FindRoom(room.Id)!, house.FindRoom(right)!)
                : new Refusal($"There is no room {value.Trim()}."));
        }
        foreach (var item in items)
        {
            if (FactTable.Find(item.Kind, detail) is { IsKeyed: false } fact)
                return Typed(house, item, fact, value, today);
        }
        foreach (var item in items)
        {
            if (ByLabel(item.Kind, detail) is { } fact)
                return Typed(house, item, fact, value, today);
        }
        return OfLeg(house, items, detail, value, today) ?? OneByOne(house, items, detail, value) ?? Unknown(items, detail);
    }

    /// <summary>What the screens ask about before they take it is refused here: a script can't be asked.</summary>
    private static Result<Draft> Typed(House house, Item item, Fact fact, string value, DateOnly? today) =>
        SetFact.Typed(house, item, fact, value, today: today).Then<Draft>(draft =>
            !string.IsNullOrWhiteSpace(value) && OrderGoesOut.Against(house, item, fact) is { } against
                ? new Refusal($"{house.NameOf(item)}, {fact.Label}: {against} Put the size first.") : draft);

    /// <summary>A detail by the label that the screens show, with what it is of before it where a sheet shows both: <c>Unit: Note</c>.</summary>
    private static Fact? ByLabel(ItemKind kind, string detail) => FactTable.Of(kind).FirstOrDefault(f => !f.IsKeyed
        && (SameName.Comparer.Equals(f.Label, Spelling.Shown(detail))
            || SameName.Comparer.Equals($"{ItemsNamed.Word(kind)}: {f.Label}", Spelling.Shown(detail))));

    /// <summary>A detail of a leg of a run, as a unit's sheet shows it: <c>Leg 2: Length</c>.</summary>
    private static Result<Draft>? OfLeg(House house, IReadOnlyList<Item> items, string detail, string value, DateOnly? today)
    {
        if (!detail.StartsWith(LegWord, StringComparison.OrdinalIgnoreCase) || items.FirstOrDefault(i => i.Kind == ItemKind.Run) is not { } run)
            return null;
        var parts = detail[LegWord.Length..].Split([':', ' '], 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length < 2 || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return null;
        var legs = house.Under(run.Id, ItemKind.Leg);
        if (number < 1 || number > legs.Length)
            return new Refusal($"The run of {house.NameOf(run)} has {legs.Length} legs: there is no leg {number}.");
        if ((FactTable.Find(ItemKind.Leg, parts[1]) ?? ByLabel(ItemKind.Leg, parts[1])) is not { IsKeyed: false } fact)
            return null;
        return SetFact.Typed(house, legs[number - 1], fact, value, today: today);
    }

    /// <summary>A detail that there is once for each other item, whose name follows: <c>moves W03</c>, <c>expects Ash Example</c>.</summary>
    private static Result<Draft>? OneByOne(House house, IReadOnlyList<Item> items, string detail, string value)
    {
        foreach (var item in items)
        {
            foreach (var fact in FactTable.Of(item.Kind).Where(f => f is { IsKeyed: true, IsByStep: false }))
            {
                var word = new[] { fact.Name, fact.Label }.FirstOrDefault(w => detail.StartsWith(w + " ", StringComparison.OrdinalIgnoreCase)
                    || detail.StartsWith(w + ":", StringComparison.OrdinalIgnoreCase));
                if (word is null)
                    continue;
                var whose = detail[(word.Length + 1)..].Trim();
                return ItemsNamed.Find(house, whose).Then(of => of.FirstOrDefault(i => i.Kind == OfWhat(fact)) is { } key
                    ? SetFact.Typed(house, item, fact, value, key.Id)
                    : new Refusal($"{whose} is no {ItemsNamed.Word(OfWhat(fact))}, and {fact.Label} is said of each of these."));
            }
        }
        return null;
    }

    /// <summary>What the keys of a detail are that there is once for each.</summary>
    public static ItemKind OfWhat(Fact fact) => fact.Subject == ItemKind.Visit ? ItemKind.Contact : ItemKind.Unit;

    private static Refusal Unknown(IReadOnlyList<Item> items, string detail) => items[0].Kind == ItemKind.Window
        ? new Refusal($"There is no detail called {detail} of a window, a unit or a home run. trimout set --details lists all.")
        : new Refusal($"There is no detail called {detail} of a {ItemsNamed.Word(items[0].Kind)}. There are: "
            + $"{string.Join(", ", FactTable.Of(items[0].Kind).Where(f => !f.IsByStep).Select(f => f.Name))}"
            + $"{(items[0].Kind == ItemKind.Room ? $", {MergeInto}" : "")}.");

    private static Result<Draft> Add(House house, string sort, string value, DateOnly? today) => ItemsNamed.Sort(sort) switch
    {
        ItemKind.Room => RoomNames.Read(value.Trim(), house).Then(r => r.Id is null ? AddItems.Room(house, r) : new Refusal($"There is a room {r} already.")),
        ItemKind.Contact => QuickPeople.Contact(house, value),
        ItemKind.Visit => QuickPeople.Visit(house, value, today),
        ItemKind.Service => QuickService.Read(house, value, today),
        { } kind when FactTable.Find(kind, "name") is not null && kind != ItemKind.Preset => AddItems.Named(house, kind, value),
        _ => new Refusal($"\"{sort}\" is nothing that is added by its name: write room, panel, hub, remote, box, contact, visit, service or a sort of part."),
    };
}

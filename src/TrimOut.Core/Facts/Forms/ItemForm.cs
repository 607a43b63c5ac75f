using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts.Forms;

/// <summary>Another item of the house: typed and shown by its name, stored by its id.</summary>
internal sealed class ItemForm(ItemKind kind) : Form<ItemRef>
{
    public override string Hint => "the name of one in this house";

    public override Result<ItemRef> Read(string typed, House house)
    {
        var all = Options(house);
        var matches = all.Where(o => string.Equals(o.Shown, typed, StringComparison.OrdinalIgnoreCase) || o.Stored == typed).ToList();
        if (matches.Count == 0 && typed.Length > 0)
            matches = [.. all.Where(o => o.Shown.StartsWith(typed, StringComparison.OrdinalIgnoreCase))];
        if (matches.Count == 0 && typed.Length > 0)
            matches = [.. all.Where(o => NameWords.Begin(o.Shown, typed))];
        if (matches.Count == 1)
            return new ItemRef(matches[0].Stored);
        var names = string.Join(", ", all.Select(o => o.Shown).Take(8));
        return matches.Count > 1 ? new Refusal($"\"{typed}\" fits more than one: {string.Join(", ", matches.Select(o => o.Shown).Take(8))}.")
            : all.Count == 0 ? new Refusal($"This house has no {KebabCase.Of(kind).Replace('-', ' ')} yet. Add one first.")
            : new Refusal($"\"{typed}\" is not in this house. There are: {names}.");
    }

    public override string Write(ItemRef value) => value.Id;

    public override Result<ItemRef> Decode(string stored) => new ItemRef(stored);

    public override string Show(ItemRef value, House house) => kind == ItemKind.HeadCover && value.Id == HeadCover.NoCoverToCome ? HeadCover.NoCover :
        house.Find(value.Id) is not { } item ? ItemNames.Removed.English
        : item.Removed ? ItemNames.RemovedOne.In(word => word, NameOf(item, house)) : NameOf(item, house);

    /// <summary>Those of the house. That a window has no head cover can be said in any house, for it is no part of a maker.</summary>
    public override IReadOnlyList<Option> Options(House house) =>
    [
        .. house.ItemsOf(kind).Select(i => new Option(i.Id, NameOf(i, house))),
        .. kind == ItemKind.HeadCover && HeadCover.IsNoCoverToCome(house) ? [new Option(HeadCover.NoCoverToCome, HeadCover.NoCover)] : Array.Empty<Option>(),
    ];

    /// <summary>Two rooms of one name are told apart by their floors.</summary>
    private static string NameOf(Item item, House house) =>
        item.Kind == ItemKind.Room && house.FindRoom(item.Id) is { } room ? room.FullName : house.NameOf(item);
}

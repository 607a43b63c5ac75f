using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;

namespace TrimOut.Screens.Sheets;

/// <summary>One row of a sheet of facts: a heading, or a fact of an item.</summary>
internal sealed record SheetRow(string Heading, Item? Item, Fact? Fact, string? Key = null, string? LabelInstead = null)
{
    public static SheetRow Head(string text) => new(text, null, null);

    public static SheetRow Of(Item item, Fact fact, string? key = null, string? label = null) => new("", item, fact, key, label);

    public bool IsFact => Fact is not null;

    public string Label => LabelInstead ?? Fact!.Label;

    public string Field => Fact!.Field(Key);

    public string Place => $"{Item!.Id}/{Field}";

    /// <summary>What stands there; who checked the values of a part, and when, is what the marks beside them say where nobody typed it.</summary>
    public string Shown(House house) => Fact!.ShowOf(Item!, house, Key) is { Length: 0 } && AboutSheet.Is(Fact)
        && PartSheet.Of(house, Item!).About.TryGetValue(Fact.Name, out var known) ? Fact.ShowStored(known, house) : Fact.ShowOf(Item!, house, Key);
}

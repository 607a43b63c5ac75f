using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

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

    public string Shown(House house) => Fact!.ShowOf(Item!, house, Key);
}

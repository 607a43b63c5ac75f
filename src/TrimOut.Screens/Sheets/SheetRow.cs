using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

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

    /// <summary>What stands there; who checked the values of a part, and when, is what the marks beside them say, whoever is noted.</summary>
    public string Shown(House house) => !AboutSheet.Is(Fact!) || Fact!.Name is not (AboutSheet.HeldBy or AboutSheet.HeldOn)
        ? Fact!.ShowOf(Item!, house, Key)
        : (PartSheet.Of(house, Item!).About.TryGetValue(Fact.Name, out var known) ? Fact.ShowStored(known, house) : "")
            + (Fact.Name == AboutSheet.HeldBy ? Open(Item!) : "");

    private static string Open(Item part) => PartSheet.NotChecked(part) switch
    {
        (0, _) => "",
        var (open, there) when open == there => $"nobody: {NumberText.Plain(open)} of {NumberText.Plain(there)} not checked",
        var (open, there) => $"; {NumberText.Plain(open)} of {NumberText.Plain(there)} not checked",
    };
}

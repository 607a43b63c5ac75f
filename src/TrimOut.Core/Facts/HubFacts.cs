using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a hub.</summary>
public static class HubFacts
{
    private static readonly Declare Of = new(ItemKind.Hub);

    public static readonly Fact<string> Name = Of.Text("name", "Hub", "What it is called.", Phase.Pair, 40);
    public static readonly Fact<ItemRef> Type = Of.Item(ItemKind.HubType, "type", "Type", "Which hub of the kit.", Phase.Pair);
    public static readonly Fact<string> Location = Of.Text("location", "Location", "Where it stands.", Phase.Pair);

    internal static readonly Fact[] All = [Name, Type, Location];
}

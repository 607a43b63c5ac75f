using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a remote.</summary>
public static class RemoteFacts
{
    private static readonly Declare Of = new(ItemKind.Remote);

    public static readonly Fact<string> Name = Of.Text("name", "Remote", "What it is called.", Phase.Pair, 40);
    public static readonly Fact<ItemRef> Type = Of.Item(ItemKind.RemoteType, "type", "Type", "Which remote of the kit.", Phase.Pair);
    public static readonly Fact<ItemRef> Room = Of.Item(ItemKind.Room, "room", "Room", "Where it is kept.", Phase.Pair);
    public static readonly Fact<ItemRef> Hub = Of.Item(ItemKind.Hub, "hub", "Hub", "The hub it counts at.", Phase.Pair);
    public static readonly Fact<string> Plate = Of.Text("plate", "Wall plate", "Its wall plate and place in it, such as 2-gang, left.", Phase.Pair, 40);
    public static readonly Fact<YesNo> Moves = Of.YesPer("moves", "Moves", "Whether it moves that unit.", Phase.Pair);

    internal static readonly Fact[] All = [Name, Type, Room, Hub, Plate, Moves];
}

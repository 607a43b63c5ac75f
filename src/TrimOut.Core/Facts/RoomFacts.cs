using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a room.</summary>
public static class RoomFacts
{
    private static readonly Declare Of = new(ItemKind.Room);

    public static readonly Fact<string> Name = Of.Text("name", "Room", "What the owner calls it.", Phase.WalkThrough, 60);
    public static readonly Fact<string> Floor = Of.Text("floor", "Floor", "Such as Main or Upper.", Phase.WalkThrough, 30);
    public static readonly Fact<int> WalkingOrder = Of.Count("order", "Walking order", "Its place on the walk through the house.", Phase.WalkThrough, 1, 999);

    internal static readonly Fact[] All = [Name, Floor, WalkingOrder];
}

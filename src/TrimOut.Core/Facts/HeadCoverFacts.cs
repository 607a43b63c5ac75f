using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What the maker's sheet says about a head cover.</summary>
public static class HeadCoverFacts
{
    private static readonly Declare Of = new(ItemKind.HeadCover);

    public static readonly Fact<string> Name = Of.Text("name", "Head cover", "Fascia, valance, none.", null, 40);
    public static readonly Fact<Length> RoomInside = Of.Opening("room-inside", "Room inside", "The largest roll that turns freely inside it.", null, 0, 24);
    public static readonly Fact<Length> Depth = Of.Opening("depth", "Depth", "How far it reaches back from its front.", null, 0, 24);

    internal static readonly Fact[] All = [Name, RoomInside, Depth, .. AboutSheet.Declared(Of)];
}

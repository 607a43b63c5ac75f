using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a box of cable on hand.</summary>
public static class BoxFacts
{
    private static readonly Declare Of = new(ItemKind.Box);

    public static readonly Fact<string> Name = Of.Text("name", "Box", "What is written on it, such as A or 3.", Phase.RoughIn, 20);
    public static readonly Fact<ItemRef> Cable = Of.Item(ItemKind.CableType, "cable", "Cable", "The cable in it.", Phase.RoughIn);
    public static readonly Fact<Length> Left = Of.Cable("left", "Left in it", "How much cable is left in it.", Phase.RoughIn, 10000);

    internal static readonly Fact[] All = [Name, Cable, Left];
}

using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Houses;

/// <summary>A box of cable on hand, full or in part.</summary>
public sealed class CableBox(House house, Item item) : Subject(house, item)
{
    /// <summary>The cable in it; null while none is chosen.</summary>
    public CableType? Cable => Target(BoxFacts.Cable) is { } cable ? new CableType(House, cable) : null;

    /// <summary>Cable left in it.</summary>
    public Length? Left => Item.Get(BoxFacts.Left);
}

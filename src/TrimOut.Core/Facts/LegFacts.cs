using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What is known about one leg of a home run.</summary>
public static class LegFacts
{
    private static readonly Declare Of = new(ItemKind.Leg);

    public static readonly Fact<LegDirection> Direction = Of.Choice<LegDirection>("direction", "Way", "Up, down, across or through a floor.", Phase.RoughIn);
    public static readonly Fact<Length> Length = Of.Cable("length", "Length", "Length of this leg.", Phase.RoughIn);
    public static readonly Fact<CablePlace> Place = Of.Choice<CablePlace>("place", "Place",
        "What is around it: a wall, the way between floors, an air-handling space.", Phase.RoughIn);

    internal static readonly Fact[] All = [Direction, Length, Place];
}

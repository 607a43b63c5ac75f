using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What is known about one leg of a home run.</summary>
public static class LegFacts
{
    private static readonly Declare Of = new(ItemKind.Leg);

    public static readonly Fact<LegDirection> Direction = Of.Choice<LegDirection>("direction", "Direction",
        "Up, down, across or through a floor.", Phase.RoughIn);
    public static readonly Fact<Length> Length = Of.Cable("length", "Length", "Length of this leg.", Phase.RoughIn);
    public static readonly Fact<CablePlace> Place = Of.Choice<CablePlace>("place", "Place",
        "What is around it: a wall, the way between floors, an air-handling space.", Phase.RoughIn);

    public static readonly Fact<YesNo> AirMoves = Of.Choice<YesNo>("air-moves", "Return air or plenum",
        "Whether air of the building moves around it, such as a return through joists or over a ceiling: ask whoever plans the air.", Phase.RoughIn);

    public static readonly Fact<Conduit> Conduit = Of.Choice<Conduit>("conduit", "Conduit",
        "The tube that it lies in. The code in force says what that relaxes.", Phase.RoughIn);

    public static readonly Fact<YesNo> FireBarrier = Of.Choice<YesNo>("fire-barrier", "Through a fire barrier",
        "Whether it goes through a wall or floor that must hold back fire. The drawings or the local authority say which do.", Phase.RoughIn);
    public static readonly Fact<string> SealedBy = Of.Somebody("sealed-by", "Sealed by",
        "Who sealed the hole around it so that fire does not pass.", Phase.RoughIn);
    public static readonly Fact<DateOnly> SealSeenOn = Of.Date("seal-seen-on", "Seal seen on", "The day on which that seal was seen.", Phase.RoughIn);

    internal static readonly Fact[] All = [Direction, Length, Place, AirMoves, Conduit, FireBarrier, SealedBy, SealSeenOn];
}

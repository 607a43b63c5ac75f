using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Checks.Clearance;

/// <summary>A raised unit that rolls: it hangs from where it starts as far down as its roll is thick, with what that needs to turn.</summary>
internal static class RaisedRoll
{
    private static readonly Fact<Length>[] Needed = [CoveringKindFacts.Tube, CoveringKindFacts.FabricThickness, CoveringKindFacts.ExtraFabric];

    /// <summary>The roll of a unit, as a stack is told; null with what is missing.</summary>
    public static (RaisedStack? Figures, Outcome.NotChecked? Unknown) Of(Unit unit)
    {
        var kind = unit.Kind!;
        if (Needed.FirstOrDefault(f => kind[f] is null) is { } missing)
            return (null, NotChecked.Of(kind, missing));
        if (unit.Window.Mount is not { } mount)
            return (null, NotChecked.Of(unit.Window, WindowFacts.Mount));
        var above = mount == Mount.Inside ? Length.Zero : unit.Window.Item.Get(WindowFacts.HeadAbove);
        if (above is not { } starts)
            return (null, NotChecked.Of(unit.Window, WindowFacts.HeadAbove));
        return unit.Drop is { } drop
            ? (new RaisedStack(drop, Roll.RoomToTurn(kind[CoveringKindFacts.Tube]!.Value, kind[CoveringKindFacts.FabricThickness]!.Value,
                drop + kind[CoveringKindFacts.ExtraFabric]!.Value), starts), null)
            : (null, NotChecked.Of(unit.Window, WindowFacts.RoughHeight));
    }
}

using System.Collections.Frozen;
using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>The fields of which a house knows what stood there before: those that readings, marks, labels and orders are about.</summary>
/// <remarks>A value that was put back to what it was is no other one; without the values in between nobody could tell.</remarks>
internal static class EarlierValues
{
    private static readonly string Moves = RemoteFacts.Moves.Field("");
    private static readonly string Position = PresetFacts.Position.Field("");

    private static readonly FrozenSet<string> OfUnit = new Fact[]
    {
        UnitFacts.Hub, UnitFacts.Serial, UnitFacts.Acknowledgement, UnitFacts.Kind, UnitFacts.LeadSide, UnitFacts.Power, UnitFacts.Fabric, UnitFacts.Colour,
        UnitFacts.Opacity, UnitFacts.HeadCover, UnitFacts.OrderWidth, UnitFacts.OrderHeight,
    }.Select(f => f.Name).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether they are kept of a field.</summary>
    public static bool AreKept(ItemKind kind, string field) => kind switch
    {
        ItemKind.Window => field == WindowFacts.Tag.Name || field == WindowFacts.Mount.Name,
        ItemKind.Run => field == RunFacts.Panel.Name || field == RunFacts.Output.Name || field == RunFacts.Cable.Name || field == RunFacts.BranchesOff.Name
            || field == RunFacts.FirstLoop.Name,
        ItemKind.Unit => OfUnit.Contains(field),
        ItemKind.Remote => field == RemoteFacts.Type.Name || field.StartsWith(Moves, StringComparison.Ordinal),
        ItemKind.Preset => field.StartsWith(Position, StringComparison.Ordinal),
        _ => false,
    };
}

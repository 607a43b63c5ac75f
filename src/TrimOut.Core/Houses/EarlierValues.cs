using TrimOut.Core.Facts;

namespace TrimOut.Core.Houses;

/// <summary>The fields of which a house knows what stood there before: those that readings, marks and labels are about.</summary>
/// <remarks>A value that was put back to what it was is no other one; without the values in between nobody could tell.</remarks>
internal static class EarlierValues
{
    private static readonly string Moves = RemoteFacts.Moves.Field("");
    private static readonly string Position = PresetFacts.Position.Field("");

    /// <summary>Whether they are kept of a field.</summary>
    public static bool AreKept(ItemKind kind, string field) => kind switch
    {
        ItemKind.Window => field == WindowFacts.Tag.Name,
        ItemKind.Run => field == RunFacts.Panel.Name || field == RunFacts.Output.Name || field == RunFacts.Cable.Name || field == RunFacts.BranchesOff.Name
            || field == RunFacts.FirstLoop.Name,
        ItemKind.Unit => field == UnitFacts.Hub.Name || field == UnitFacts.Serial.Name,
        ItemKind.Remote => field == RemoteFacts.Type.Name || field.StartsWith(Moves, StringComparison.Ordinal),
        ItemKind.Preset => field.StartsWith(Position, StringComparison.Ordinal),
        _ => false,
    };
}

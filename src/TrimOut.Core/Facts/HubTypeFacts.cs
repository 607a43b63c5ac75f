using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>What the maker's sheet says about a hub.</summary>
public static class HubTypeFacts
{
    private static readonly Declare Of = new(ItemKind.HubType);

    public static readonly Fact<string> Name = Of.Text("name", "Hub type", "What the sheet calls it.", null, 40);
    public static readonly Fact<int> Devices = Of.Count("devices", "Devices", "How many units and remotes it knows.", null, 1, 999);

    internal static readonly Fact[] All = [Name, Devices, .. AboutSheet.Declared(Of)];
}

using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>What the maker's sheet says about a remote.</summary>
public static class RemoteTypeFacts
{
    private static readonly Declare Of = new(ItemKind.RemoteType);

    public static readonly Fact<string> Name = Of.Text("name", "Remote type", "What the sheet calls it.", null, 40);
    public static readonly Fact<int> Units = Of.Count("units", "Units", "How many units it moves at the most.", null, 1, 99);
    public static readonly Fact<int> Gangs = Of.Count("gangs", "Gangs", "How many gangs of a wall plate it takes; 0 is handheld.", null, 0, 6);

    internal static readonly Fact[] All = [Name, Units, Gangs, .. AboutSheet.Declared(Of)];
}

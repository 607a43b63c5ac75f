using TrimOut.Core;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <summary>
/// A tag that reads as a length, or is the name of a room, was most likely typed into the wrong field. A whole number is a tag as others are.
/// </summary>
internal static class TagDoubt
{
    /// <summary>What to ask before a tag is taken; null where nothing speaks against it.</summary>
    public static string? Of(string typed, House house) => !typed.Trim().All(char.IsAsciiDigit) && LengthText.Read(typed, house.DisplayUnits) is { Ok: true }
        ? $"\"{typed.Trim()}\" reads as a length, and this is the tag of a window."
        : house.Rooms.Any(r => SameName.Comparer.Equals(r.Name, typed.Trim())) ? $"\"{typed.Trim()}\" is a room, and this is the tag of a window." : null;
}

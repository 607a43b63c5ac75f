using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Rooms;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>What may be a slip in the line of a new window, asked about before it makes one.</summary>
internal static class LineDoubts
{
    /// <summary>The key that opens the line, which stays open for the next window.</summary>
    public const string Opens = "n";

    /// <summary>The question; null where there is none.</summary>
    public static string? Of(string line, House house)
    {
        if (QuickWindow.Read(line, house) is not { Ok: true, Value: var quick })
            return null;
        if (SameName.Comparer.Equals(quick.Tag, Opens + AddItems.NextTag(house)))
            return $"The line was open already, and {Opens} went into it: the tag would be {quick.Tag}, and not {AddItems.NextTag(house)}.";
        if (quick.LeftOutBecause is { } because && Reasons.Against(because) is { } none)
            return none;
        if (quick.Room is { } room)
        {
            if (RoomDoubts.Of(room, house) is { } near)
                return near;
            if (quick.SwallowedBy(house) is { } word)
                return $"\"{word}\" is taken for a part of {room}, which would be new: the room comes last, behind all else.";
        }
        var said = line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(w => !SameName.Comparer.Equals(w, quick.Tag)).ToList();
        return said switch
        {
            [] when house.Windows.IsEmpty => $"Nothing is said of {quick.Tag} yet, and there is no window before to carry over from.",
            [{ Length: 1 or 2 } only] when !IsFacing(only) => $"\"{only}\" is all that is said of {quick.Tag}; it would be {quick.Echo(house)}.",
            _ => null,
        };
    }

    private static bool IsFacing(string word) => word.Length == 2 && Azimuth.Read(word) is { Ok: true } && !word.All(char.IsAsciiDigit);
}

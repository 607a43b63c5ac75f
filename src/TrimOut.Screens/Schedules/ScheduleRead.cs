using System.Collections.Immutable;
using TrimOut.Core.History;

namespace TrimOut.Screens.Schedules;

/// <summary>A file that may be a window schedule.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Changed">When it was changed last; null where that can't be seen.</param>
public sealed record ScheduleChoice(string Path, DateTimeOffset? Changed);

/// <summary>What a window schedule would bring into a house.</summary>
/// <param name="Sheet">The sheet of a spreadsheet that was read; null of another file.</param>
/// <param name="Draft">The change; null where it would change nothing.</param>
/// <param name="Windows">Windows that it adds.</param>
/// <param name="Differing">What it says otherwise than the house, and what comes of each.</param>
/// <param name="Taken">How many of those the house takes over.</param>
/// <param name="Missing">Tags of windows that the house has and it has not.</param>
/// <param name="Remarks">What could not be read, and what was read in a way that somebody should look at.</param>
/// <param name="Columns">What is taken from which column.</param>
/// <param name="Unused">Headers of columns that nothing is taken from.</param>
public sealed record ScheduleRead(
    string? Sheet,
    Draft? Draft,
    ImmutableArray<ScheduleLine> Windows,
    ImmutableArray<ScheduleLine> Differing,
    int Taken,
    ImmutableArray<string> Missing,
    ImmutableArray<ScheduleLine> Remarks,
    ImmutableArray<ScheduleColumn> Columns,
    ImmutableArray<string> Unused)
{
    /// <summary>Of windows that are missing: what there is of one already, such as an order or a cable in the wall.</summary>
    public ImmutableDictionary<string, string> Standing { get; init; } = ImmutableDictionary<string, string>.Empty;
}

/// <summary>A line about a schedule.</summary>
/// <param name="Head">What it is about: a tag, or a line of the file.</param>
/// <param name="Text">What is said.</param>
public sealed record ScheduleLine(string Head, string Text)
{
    /// <summary>What taking it does to the house; nothing where it can't be taken alone.</summary>
    public ImmutableArray<Edit> Edits { get; init; } = [];

    /// <summary>Whether the house keeps its own, and the edits come only where somebody takes the row.</summary>
    public bool Kept { get; init; }
}

/// <summary>A detail that a schedule can hold.</summary>
/// <param name="Field">Its name.</param>
/// <param name="Help">What it is taken for.</param>
/// <param name="Header">The column that it is taken from; null where from none.</param>
public sealed record ScheduleColumn(string Field, string Help, string? Header)
{
    /// <summary>What names that column; empty for none.</summary>
    public string Name { get; init; } = Header ?? "";

    /// <summary>The unit that was said for it, such as "=mm"; empty where none was.</summary>
    public string Said { get; init; } = "";

    /// <summary>Where it is taken from, in words, with the unit of its bare numbers.</summary>
    public string From { get; init; } = Header is null ? "from no column" : $"from \"{Header}\"";
}

using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.HouseFile.Schedules;

/// <summary>The tags by which schedules brought windows that somebody renamed since.</summary>
internal sealed class ImportedTags
{
    private readonly Dictionary<string, string> _tagOf = new(StringComparer.Ordinal);
    private readonly House _house;

    /// <summary>Reads them.</summary>
    /// <param name="house">The house.</param>
    /// <param name="imports">The changes that are in force by which schedules came in.</param>
    public ImportedTags(House house, IEnumerable<Change> imports)
    {
        _house = house;
        foreach (var put in imports.SelectMany(c => c.Edits).OfType<Edit.Put>().Where(p => p.Field == WindowFacts.Tag.Name && p.Value is not null))
            _tagOf[put.Item] = put.Value!;
    }

    /// <summary>The tag by which a window came, where it has another one now; null where it has that, or came by no schedule.</summary>
    public string? Before(Window window) =>
        _tagOf.TryGetValue(window.Id, out var tag) && !SameName.Comparer.Equals(tag, window.Tag) ? tag : null;

    /// <summary>The window that came by a tag and has another one now; null where there is none, or several.</summary>
    public Window? Renamed(string tag) =>
        _house.Windows.Where(w => Before(w) is { } before && SameName.Comparer.Equals(before, tag)).Take(2).ToList() is [var one] ? one : null;
}

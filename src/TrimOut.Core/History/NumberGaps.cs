using System.Collections.Immutable;
using System.Globalization;

namespace TrimOut.Core.History;

/// <summary>Numbers of a device that are missing from a history, between others or up to one that another change names.</summary>
/// <param name="Device">The device.</param>
/// <param name="From">The first number that is missing.</param>
/// <param name="To">The last.</param>
/// <remarks>
/// A device numbers its changes from 1 without a gap. What is missing behind its last change shows only where another change names it, so a
/// history that was cut at its end may look whole.
/// </remarks>
public sealed record NumberGap(string Device, long From, long To)
{
    /// <summary>How many changes are missing.</summary>
    public long Count => To - From + 1;

    /// <summary>Which changes are missing.</summary>
    public string Which => From == To ? string.Create(CultureInfo.InvariantCulture, $"{Device}:{From}")
        : string.Create(CultureInfo.InvariantCulture, $"{Device}:{From} to {Device}:{To}");

    /// <summary>What is missing, for the user.</summary>
    public string Sentence => From == To
        ? string.Create(CultureInfo.InvariantCulture, $"change {Device}:{From} is missing.")
        : string.Create(CultureInfo.InvariantCulture, $"changes {Device}:{From} to {Device}:{To} are missing.");
}

/// <summary>Finds what is missing from a history by the numbers of its changes alone.</summary>
public static class NumberGaps
{
    /// <summary>The gaps, by device and number. It goes from one number that is there to the next, never through those that are not.</summary>
    public static ImmutableArray<NumberGap> In(IEnumerable<Change> changes)
    {
        var named = new SortedDictionary<string, (HashSet<long> There, long Last)>(StringComparer.Ordinal);
        foreach (var change in changes)
        {
            Note(change.Id, isThere: true);
            foreach (var id in change.Edits.SelectMany(Named))
                Note(id, isThere: false);
        }
        return [.. named.SelectMany(d => Of(d.Key, d.Value.There, d.Value.Last))];

        void Note(ChangeId id, bool isThere)
        {
            var (there, last) = named.TryGetValue(id.Device, out var known) ? known : ([], 0);
            if (isThere)
                there.Add(id.Sequence);
            named[id.Device] = (there, Math.Max(last, id.Sequence));
        }
    }

    private static IEnumerable<ChangeId> Named(Edit edit) => edit is Edit.Put put ? put.Over : [];

    private static IEnumerable<NumberGap> Of(string device, HashSet<long> there, long last)
    {
        var before = 0L;
        foreach (var number in there.Order())
        {
            if (number > before + 1)
                yield return new NumberGap(device, before + 1, number - 1);
            before = number;
        }
        if (last > before)
            yield return new NumberGap(device, before + 1, last);
    }
}

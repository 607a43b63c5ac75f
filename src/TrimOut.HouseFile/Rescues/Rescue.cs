using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.History;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Rescues;

/// <summary>What could be got out of a damaged house file.</summary>
/// <param name="Changes">The changes whose seals fit, in the order in which the file got them.</param>
/// <param name="Lost">What could not be read, for the user; empty when all could.</param>
public sealed record Rescued(ImmutableArray<Change> Changes, ImmutableArray<string> Lost);

/// <summary>Gets every sound change out of a damaged house file. The file and its journal are only read.</summary>
public static class Rescue
{
    /// <summary>Reads what is sound in a house file and its journal.</summary>
    /// <param name="path">The damaged file.</param>
    /// <param name="also">Other copies and backups, from which lost changes are taken where they have them.</param>
    /// <exception cref="HouseStoreException">The file can't be read at all.</exception>
    public static Rescued Read(string path, params IReadOnlyList<string> also) => Read(Surroundings.Here(TimeProvider.System), path, also);

    internal static Rescued Read(Surroundings here, string path, IReadOnlyList<string> also)
    {
        var names = new HouseFileNames(Path.GetFullPath(path));
        if (!here.Files.Exists(names.Main) && !here.Files.Exists(names.Journal))
            throw Faults.NotThere(names.Main);
        var lost = ImmutableArray.CreateBuilder<string>();
        var entries = new SortedDictionary<long, Entry>();
        var expected = FromFile(here, names, entries, lost);
        FromJournal(here, names, entries, lost, ref expected);
        var read = entries.Values.Select(e => (Entry: e, Change: ChangeJson.Read(e.Json))).Where(e => e.Change.Ok).ToDictionary(e => e.Entry.Number, e => e.Change.Value);
        var known = read.Values.Select(c => c.Id).ToHashSet();
        var elsewhere = also.SelectMany(other => Read(here, other, []).Changes).Where(c => known.Add(c.Id)).ToList();
        lost.AddRange(Gaps(read, Math.Max(expected, read.Keys.DefaultIfEmpty().Max())));
        if (elsewhere.Count > 0)
            lost.Add(string.Create(CultureInfo.InvariantCulture, $"{elsewhere.Count} changes that are not in {names.Main} were taken from the other copies."));
        return new Rescued([.. read.OrderBy(r => r.Key).Select(r => r.Value), .. elsewhere], lost.ToImmutable());
    }

    private static long FromFile(Surroundings here, HouseFileNames names, SortedDictionary<long, Entry> entries, ImmutableArray<string>.Builder lost)
    {
        if (!here.Files.Exists(names.Main))
        {
            lost.Add($"{names.Main} is missing: only its journal was read.");
            return 0;
        }
        var file = here.Files.Read(names.Main);
        foreach (var entry in RowScan.Read(file, here.Seal))
            entries.TryAdd(entry.Number, entry);
        if (Trailer.Read(file) is not { } trailer)
        {
            lost.Add("The file's last page can't be read, so nobody knows how many changes there were after the last that was found.");
            return 0;
        }
        if (trailer.Journal is not null && !here.Files.Exists(names.Journal))
            lost.Add($"The changes since the house was last opened were in {names.Journal}, which is missing.");
        return trailer.Count;
    }

    private static void FromJournal(Surroundings here, HouseFileNames names, SortedDictionary<long, Entry> entries, ImmutableArray<string>.Builder lost, ref long expected)
    {
        if (!here.Files.Exists(names.Journal))
            return;
        var bytes = here.Files.Read(names.Journal);
        var sound = Journal.SoundLines(bytes, here.Seal).Select(s => s.Entry).ToList();
        foreach (var entry in sound)
            entries.TryAdd(entry.Number, entry);
        expected = Math.Max(expected, sound.Select(e => e.Number).DefaultIfEmpty().Max());
        var journal = Journal.Read(bytes, here.Seal);
        if (journal.Fault is not null || journal.Unread > 0)
            lost.Add($"{names.Journal} is not whole: {journal.Fault ?? "its end can't be read."} What came after its last sound change is lost.");
    }

    private static IEnumerable<string> Gaps(Dictionary<long, Change> read, long expected)
    {
        for (long from = 1; from <= expected; from++)
        {
            if (read.ContainsKey(from))
                continue;
            var to = from;
            while (to < expected && !read.ContainsKey(to + 1))
                to++;
            var which = from == to ? string.Create(CultureInfo.InvariantCulture, $"Change {from}") : string.Create(CultureInfo.InvariantCulture, $"Changes {from} to {to}");
            var before = read.TryGetValue(from - 1, out var b) ? $", after \"{b.What}\" by {b.By} on {b.SaidAt:yyyy-MM-dd HH:mm}" : "";
            var behind = read.TryGetValue(to + 1, out var a) ? $", before \"{a.What}\" by {a.By} on {a.SaidAt:yyyy-MM-dd HH:mm}" : "";
            yield return which + before + behind;
            from = to;
        }
    }
}

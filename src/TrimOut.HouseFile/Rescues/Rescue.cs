using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Durable;

namespace TrimOut.HouseFile.Rescues;

/// <summary>What could be got out of a damaged house file.</summary>
/// <param name="Changes">The changes whose seals fit, in the order in which the file got them.</param>
/// <param name="Lost">What could not be read or is not certain, for the user; empty only when every change that was ever called saved is there.</param>
/// <param name="Apart">What lies in the files and is not of this house, or of another copy of it, and was left out; for the user.</param>
public sealed record Rescued(ImmutableArray<Change> Changes, ImmutableArray<string> Lost, ImmutableArray<string> Apart);

/// <summary>Gets every sound change out of a damaged house file. The file and its journal are only read.</summary>
/// <remarks>
/// Every entry is held against the seal that says its house, its number and what came before. No number that was read is counted up to
/// or made room for; and what is not tied to a place that is known for certain is brought out and listed as not certain.
/// </remarks>
public static class Rescue
{
    /// <summary>Reads what is sound in a house file and its journal.</summary>
    /// <param name="path">The damaged file.</param>
    /// <param name="also">Other copies and backups, from which lost changes are taken where they have them.</param>
    /// <exception cref="HouseStoreException">The file can't be read at all.</exception>
    /// <param name="house">The name of the house to bring out, where the file holds several; null for the one that the file is of.</param>
    public static Rescued Read(string path, IReadOnlyList<string>? also = null, string? house = null)
    {
        try
        {
            return Read(Surroundings.Here(TimeProvider.System), path, also ?? [], house);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            throw Faults.Opening(Path.GetFullPath(path), failed);
        }
    }

    internal static Rescued Read(Surroundings here, string path, IReadOnlyList<string> also, string? asked = null)
    {
        var own = Found.In(here, HouseFileNames.Of(path));
        var (lost, apart) = (ImmutableArray.CreateBuilder<string>(), ImmutableArray.CreateBuilder<string>());
        if ((asked ?? own.House) is not { } house)
        {
            lost.Add($"Nothing in {own.Names.Main} says which house it is of, so nothing could be checked against its seals.");
            return new Rescued([], lost.ToImmutable(), []);
        }
        var others = new List<Found>();
        foreach (var other in also.Select(o => LooseJournals.IsOne(here, o) ? Found.InJournal(here, Path.GetFullPath(o))
            : Found.In(here, HouseFileNames.Of(o))))
        {
            if (!own.HasJournal && own.Last?.Journal is { } missing && other.Heads.Any(h => h.Id == missing))
            {
                // It lies under another name, as after the house file alone was renamed: it is read as what it is.
                own = Found.In(here, own.Names with { JournalAt = other.Names.Journal });
                apart.Add($"{other.Names.Journal} is the journal of {own.Names.Main}: it goes on from its last change, and was read as that.");
                continue;
            }
            if (other.House is null)
                lost.Add($"Nothing in {other.Names.Main} says which house it is of by a seal: nothing was taken from it. What a history as text has is taken "
                    + $"into what is rescued by: trimout merge NEW.trimout {other.Names.Main}");
            else if (other.House == house)
                others.Add(other);
            else
                lost.Add($"{other.Names.Main} is of another house: nothing was taken from it.");
        }
        var pool = new Pool(others.Prepend(own).SelectMany(f => f.EntriesOf(house, here.Seal)));
        var (expected, doubts, end) = ExpectedOf(own, house);
        lost.AddRange(doubts);
        apart.AddRange(Foreign(own, house));
        var trunk = pool.Trunk(Seal.First(house),
            [.. own.AnchorsOf(house), .. others.SelectMany(o => o.AnchorsOf(house)).Where(a => IsOurs(pool, own.AnchorsOf(house), house, a))]);
        var tied = trunk.Values.Select(e => e.Seal).ToHashSet(StringComparer.Ordinal);
        var loose = Loose(pool, tied, trunk, own, others, house, here.Seal);
        foreach (var entry in loose.Sure)
            trunk[entry.Number] = entry;
        // What was put back stands twice, in another order and under other seals: the change itself is brought out.
        var there = trunk.Values.Select(e => e.Json).ToHashSet(StringComparer.Ordinal);
        var joined = own.Trailers.Count(t => t.House == house) > 1 ? Joined(loose.Apart, trunk.Values) : [];
        there.UnionWith(joined.Select(j => j.Json));
        if (joined.Count > 0)
            apart.Add($"{NumberText.Counted(joined.Count, "change")} of another copy of this house, which lies in the same file, "
                + $"{(joined.Count == 1 ? "was" : "were")} taken in as by a merge.");
        var leftOut = loose.Apart.Concat(own.LinesOfOtherCopies(house, here.Seal)).Count(e => !there.Contains(e.Json));
        if (leftOut > 0)
            apart.Add($"{NumberText.Counted(leftOut, "change is", "changes are")} of another copy of this house, or can't be told from such: "
                + $"left out. To take them in from that copy: trimout merge.");

        var read = new SortedDictionary<long, Change>();
        var names = new HashSet<ChangeId>();
        foreach (var entry in trunk.Values)
        {
            if (ChangeJson.Read(entry.Json) is { Ok: true } change && ChangeJson.VersionOf(entry.Json) <= ChangeJson.Version)
            {
                if (names.Add(change.Value.Id))
                    read.Add(entry.Number, change.Value);
                else
                    lost.Add(string.Create(CultureInfo.InvariantCulture,
                        $"Change {entry.Number} has the name of another one that was brought out, {change.Value.Id}, and was left out."));
            }
            else
                lost.Add(string.Create(CultureInfo.InvariantCulture, $"Change {entry.Number} is sound, and in a form that this TrimOut can't read."));
        }
        var known = own.EntriesOf(house, here.Seal).Select(e => e.Seal).ToHashSet(StringComparer.Ordinal);
        var filled = trunk.Values.Where(e => !known.Contains(e.Seal) && read.ContainsKey(e.Number)).Select(e => e.Number).ToList();
        apart.AddRange(Gaps.Filled(filled, own.Names.Main));
        if (end is not null)
            lost.Add(filled.Count > 0 && filled[^1] == read.Keys.Last()
                ? string.Create(CultureInfo.InvariantCulture, $"{end} Whether anything was saved after change {filled[^1]} can't be told.")
                : $"{end} {AfterTheEnd}");
        lost.AddRange(Gaps.Of(read, Math.Max(expected, trunk.Keys.LastOrDefault())));
        lost.AddRange(Gaps.Uncertain(loose.Sure.Select(e => e.Number)));
        if (own.HasFile && own.TrailerOf(house) is null)
        {
            var inFile = own.Rows.Select(r => r.Entry.Seal).ToHashSet(StringComparer.Ordinal);
            var inJournal = own.Lines.Select(l => l.Entry.Seal).ToHashSet(StringComparer.Ordinal);
            lost.AddRange(Gaps.OfWhoseJournal(trunk.Values.Where(e => inJournal.Contains(e.Seal) && !inFile.Contains(e.Seal)).Select(e => e.Number),
                own.Names.Journal));
        }
        var elsewhere = Elsewhere(loose.FromOthers, read.Values);
        if (elsewhere.Count > 0)
            apart.Add($"{NumberText.Counted(elsewhere.Count, "change that is", "changes that are")} not in {own.Names.Main} "
                + $"{(elsewhere.Count == 1 ? "was" : "were")} taken from the other copies.");
        return new Rescued([.. read.Values, .. elsewhere, .. Elsewhere(joined, read.Values.Concat(elsewhere))], lost.ToImmutable(), apart.ToImmutable());
    }

    private const string AfterTheEnd = "What came after its last sound change is lost.";

    /// <summary>How many changes there must be at the least, why there may be more, and what is wrong with the end of the journal.</summary>
    private static (long Expected, List<string> Doubts, string? End) ExpectedOf(Found own, string house)
    {
        var doubts = new List<string>();
        if (!own.HasFile)
            doubts.Add($"{own.Names.Main} is missing: only its journal was read.");
        else if (own.Last is null)
            doubts.Add("The file's last page can't be read, so nobody knows how many changes there were after the last that was found.");
        if (own.IsOfNobodyKnowsWhich)
            doubts.Add($"{own.Names.Main} holds changes of several houses, and no last page says of which it is: those of {house} were taken. "
                + "To take those of another one: --house, with its name.");
        if (own.Trailers.Count > 1)
            doubts.Add($"{own.Names.Main} is several house files, one behind the other: the last one was taken. "
                + "To take another one of them: --house, with its name.");
        var last = own.TrailerOf(house);
        var expected = last?.Count ?? 0;
        if (last is { NotesDamaged: true })
            doubts.Add("The note of how far the journal had got can't be read, so nobody knows how many changes there were after the last that was found.");
        if (last?.Reached is { } reached)
            expected = Math.Max(expected, reached.Number);
        if (own.JournalAs(house) is not { } journal)
        {
            if (last?.Journal is not null)
                return (expected, doubts, $"The changes since the house was last opened were in {own.Names.Journal}, "
                    + $"which is {(own.JournalLeadsNowhere ? "a link that leads nowhere" : "missing")}.");
            return (expected, doubts, null);
        }
        if (last is { Journal: { } name } && journal.Head?.Id != name)
            return (expected, doubts, $"{own.Names.Journal} is not the journal that goes on from the file.");
        if (last is { Journal: null } && (journal.Head is null || journal.Last > last.Count))
            doubts.Add($"{own.Names.Journal} is not of this state of the file, and nobody knows which of the two is the later.");
        else if (journal.Fault is not null || journal.Unread > 0)
            return (expected, doubts, $"{own.Names.Journal} is not whole: {journal.Fault ?? "its end can't be read."}");
        return (expected, doubts, null);
    }

    /// <summary>What in the files is of other houses.</summary>
    private static IEnumerable<string> Foreign(Found own, string house)
    {
        foreach (var other in own.Rows.Select(r => r.House).Concat(own.Trailers.Select(t => t.House)).Where(h => h.Length > 0 && h != house).Distinct().Take(8))
            yield return $"{own.Names.Main} also holds changes of another house ({other}): they were left out.";
        foreach (var other in own.Heads.Select(h => h.House).Where(h => h.Length > 0 && h != house).Distinct().Take(8))
            yield return $"{own.Names.Journal} is of another house ({other}), or holds changes of it: they were left out.";
        if (own.Last is { } end && own.Heads.Any(h => h.House.Length == 0 && h.Id != end.Journal))
            yield return $"{own.Names.Journal} is of another house or of an older state: what of it is not tied to this file was left out.";
    }

    /// <summary>Whether a place that another copy knows lies on our chain: ours goes through it, or it goes on from where ours ends.</summary>
    private static bool IsOurs(Pool pool, IReadOnlyList<(long Number, string Seal)> anchors, string house, (long Number, string Seal) anchor)
    {
        var ours = pool.Trunk(Seal.First(house), anchors);
        if (ours.TryGetValue(anchor.Number, out var there))
            return there.Seal == anchor.Seal;
        var from = pool.Trunk(null, [anchor]);
        return from.All(e => !ours.TryGetValue(e.Key, out var known) || known.Seal == e.Value.Seal) && from.Keys.Any(ours.ContainsKey);
    }

    /// <summary>Sound entries that are tied to nothing: where their seals say a number that nothing else has, they are most likely ours.</summary>
    private static (List<Entry> Sure, IReadOnlyList<Entry> Apart, List<Entry> FromOthers) Loose(Pool pool, HashSet<string> tied,
        SortedDictionary<long, Entry> trunk, Found found, List<Found> others, string house, SealMaker seal)
    {
        var theirs = others.SelectMany(o => o.EntriesOf(house, seal)).Select(e => e.Seal).ToHashSet(StringComparer.Ordinal);
        var loose = pool.All.Where(e => !tied.Contains(e.Seal)).ToList();
        var fromOthers = loose.Where(e => theirs.Contains(e.Seal)).ToList();
        var own = loose.Where(e => !theirs.Contains(e.Seal)).ToList();
        // Two changes under one number show that another copy lies here too; then nothing tells whose the others are.
        if (own.Any(e => trunk.ContainsKey(e.Number)))
            return ([], own, fromOthers);
        var sure = own.Where(e => Seal.SaysWhere(e) || (found.IsOfOnePiece && FitsBetween(e, trunk))).GroupBy(e => e.Number)
            .Where(g => g.Count() == 1 && g.Key > 0).Select(g => g.First()).ToList();
        return (sure, [.. own.Except(sure)], fromOthers);
    }

    /// <summary>Whether the number of an entry of the first form, which is under no seal, can be right.</summary>
    private static bool FitsBetween(Entry entry, SortedDictionary<long, Entry> trunk) => entry.Number > 0 && entry.Number < trunk.Keys.LastOrDefault();

    /// <summary>
    /// What another copy of the house in the same file has under names of its own, so that a merge would take it in; nothing where that makes no history.
    /// </summary>
    private static List<Entry> Joined(IReadOnlyList<Entry> apart, IReadOnlyCollection<Entry> trunk)
    {
        var known = trunk.Select(e => ChangeJson.Read(e.Json)).Where(c => c.Ok).Select(c => c.Value).ToList();
        var more = apart.Where(e => ChangeJson.VersionOf(e.Json) <= ChangeJson.Version).ToList();
        var names = known.Select(c => c.Id).ToHashSet();
        var fresh = more.Where(e => ChangeJson.Read(e.Json) is { Ok: true } change && names.Add(change.Value.Id)).ToList();
        return fresh.Count > 0 && HouseLog.Of([.. known, .. fresh.Select(e => ChangeJson.Read(e.Json).Value)]).Ok ? fresh : [];
    }

    private static List<Change> Elsewhere(List<Entry> entries, IEnumerable<Change> known)
    {
        var ids = known.Select(c => c.Id).ToHashSet();
        return [.. entries.Select(e => ChangeJson.Read(e.Json)).Where(c => c.Ok && ids.Add(c.Value.Id)).Select(c => c.Value)];
    }
}

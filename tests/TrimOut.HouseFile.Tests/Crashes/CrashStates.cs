using System.Security.Cryptography;

namespace TrimOut.HouseFile.Tests.Crashes;

/// <summary>
/// Every state that a power cut could have left: at each cut-off point what was flushed is there; of the rest any part may be,
/// in any order, torn at sectors or pages, with zeros or what the blocks held before where a file grew.
/// </summary>
public static class CrashStates
{
    private const int Sector = 512;
    private const int Page = 4096;

    /// <summary>How the unflushed writes of a file fared.</summary>
    private enum Fate { Kept, Lost, LostButGrown, LostButGrownIntoOldBlocks, Some, TornAtSectors, TornAtPages, TornAtSectorsIntoOldBlocks }

    /// <summary>States after each step, without repeats.</summary>
    /// <param name="record">What was asked of the disk.</param>
    /// <param name="random">Chooses parts where there are too many to try all.</param>
    /// <param name="tries">How many parts are tried for each fate that has many.</param>
    /// <param name="from">The first cut-off point.</param>
    public static IEnumerable<(DiskState State, int Told, int Step)> Of(DiskRecord record, Random random, int tries, int from = 0)
    {
        var seen = new HashSet<string>();
        for (var step = from; step <= record.Steps.Count; step++)
        {
            var done = record.Steps.Take(step).ToList();
            var told = done.OfType<DiskStep.Told>().LastOrDefault()?.Saved ?? -1;
            if (step < record.Steps.Count && record.Steps[step] is DiskStep.Told)
                continue;
            foreach (var state in At(record, done, random, tries))
            {
                if (seen.Add(told + Fingerprint(state)))
                    yield return (state, told, step);
            }
        }
    }

    /// <summary>All that was asked of the disk, done.</summary>
    public static DiskState AllKept(DiskRecord record) =>
        new(NamesOf(record.Steps), Enumerable.Range(1, record.Files).ToDictionary(f => f, f => ContentsOf(record, record.Steps, f, Fate.Kept, Random.Shared)));

    /// <summary>What was flushed of all that was asked of the disk, and nothing else.</summary>
    public static DiskState AllLost(DiskRecord record) => new(NamesOf(record.Steps.Take(record.Steps.FindLastIndex(s => s is DiskStep.FlushFolder) + 1)),
        Enumerable.Range(1, record.Files).ToDictionary(f => f, f => ContentsOf(record, record.Steps, f, Fate.Lost, Random.Shared)));

    /// <summary>A file after a write.</summary>
    public static byte[] Apply(byte[] before, DiskStep.Write write)
    {
        var after = new byte[Math.Max(before.Length, write.At + write.Bytes.Length)];
        before.CopyTo(after, 0);
        write.Bytes.CopyTo(after, (int)write.At);
        return after;
    }

    private static IEnumerable<DiskState> At(DiskRecord record, List<DiskStep> done, Random random, int tries)
    {
        var sureNames = done.FindLastIndex(s => s is DiskStep.FlushFolder);
        var open = done.Skip(sureNames + 1).Where(s => s is DiskStep.Name or DiskStep.Unname).ToList();
        var namings = new List<List<DiskStep>> { open, new() };
        for (var one = 0; one < open.Count && open.Count > 1; one++)
        {
            namings.Add([open[one]]);
            namings.Add([.. open.Where((_, at) => at != one)]);
        }
        foreach (var fate in Enum.GetValues<Fate>())
        {
            var times = fate is Fate.Kept or Fate.Lost or Fate.LostButGrown or Fate.LostButGrownIntoOldBlocks ? 1 : tries;
            for (var time = 0; time < times; time++)
            {
                var contents = Enumerable.Range(1, record.Files).ToDictionary(f => f, f => ContentsOf(record, done, f, fate, random));
                foreach (var naming in namings)
                    yield return new DiskState(NamesOf([.. done.Take(sureNames + 1), .. naming]), contents);
            }
        }
    }

    private static Dictionary<string, int> NamesOf(IEnumerable<DiskStep> steps)
    {
        var names = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var step in steps)
        {
            if (step is DiskStep.Name name)
            {
                if (name.From is { } from && names.GetValueOrDefault(from) == name.File)
                    names.Remove(from);
                names[name.Path] = name.File;
            }
            else if (step is DiskStep.Unname unname)
            {
                names.Remove(unname.Path);
            }
        }
        return names;
    }

    private static byte[] ContentsOf(DiskRecord record, List<DiskStep> done, int file, Fate fate, Random random)
    {
        var sure = done.FindLastIndex(s => s is DiskStep.Flush flush && flush.File == file);
        var bytes = Array.Empty<byte>();
        for (var at = 0; at < done.Count; at++)
        {
            var kept = at <= sure || fate == Fate.Kept || (fate == Fate.Some && random.Next(2) == 0);
            if (done[at] is DiskStep.Cut cut && cut.File == file && kept)
                Array.Resize(ref bytes, (int)cut.Length);
            if (done[at] is not DiskStep.Write write || write.File != file)
                continue;
            bytes = kept ? Apply(bytes, write) : fate switch
            {
                Fate.LostButGrown => Grown(bytes, write, []),
                Fate.LostButGrownIntoOldBlocks => Grown(bytes, write, record.OlderContents[file]),
                Fate.TornAtSectors => Torn(bytes, write, Sector, [], random),
                Fate.TornAtPages => Torn(bytes, write, Page, [], random),
                Fate.TornAtSectorsIntoOldBlocks => Torn(bytes, write, Sector, record.OlderContents[file], random),
                _ => bytes,
            };
        }
        return bytes;
    }

    private static byte[] Grown(byte[] before, DiskStep.Write write, byte[] older)
    {
        var after = new byte[Math.Max(before.Length, write.At + write.Bytes.Length)];
        older.AsSpan(0, Math.Min(older.Length, after.Length)).CopyTo(after);
        before.CopyTo(after, 0);
        return after;
    }

    private static byte[] Torn(byte[] before, DiskStep.Write write, int unit, byte[] older, Random random)
    {
        var after = Grown(before, write, older);
        for (var from = write.At / unit * unit; from < write.At + write.Bytes.Length; from += unit)
        {
            if (random.Next(2) == 0)
                continue;
            var (start, end) = (Math.Max(from, write.At), Math.Min(from + unit, write.At + write.Bytes.Length));
            write.Bytes.AsSpan((int)(start - write.At), (int)(end - start)).CopyTo(after.AsSpan((int)start));
        }
        return after;
    }

    private static string Fingerprint(DiskState state)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (name, file) in state.Names.OrderBy(n => n.Key, StringComparer.Ordinal))
        {
            hash.AppendData(System.Text.Encoding.UTF8.GetBytes($"\n{name}\n{state.Contents[file].Length}\n"));
            hash.AppendData(state.Contents[file]);
        }
        return Convert.ToBase64String(hash.GetHashAndReset());
    }
}

using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Core.Plans.Firm;
using TrimOut.HouseFile;
using TrimOut.Office;
using TrimOut.Screens.Firm;

namespace TrimOut.Desks.Firm;

/// <summary>The houses of folders with the summary of each.</summary>
internal static class FirmHouses
{
    /// <summary>The house files that are meant by folders and files, each once, by their names. A folder that is not there has none.</summary>
    public static IReadOnlyList<string> Find(IEnumerable<string> places) =>
    [
        .. places.SelectMany(p => Directory.Exists(p) ? FoundFiles.In(p, "*.trimout") : File.Exists(p) ? [p] : [])
            .Select(Path.GetFullPath).Distinct(StringComparer.Ordinal)
            .OrderBy(Path.GetFileName, StringComparer.OrdinalIgnoreCase).ThenBy(p => p, StringComparer.Ordinal),
    ];

    /// <summary>The row of a house by what is kept of it; nothing of the house itself is read but its last page.</summary>
    public static FirmRow Kept(string path)
    {
        var kept = SummaryFile.Read(path);
        try
        {
            return Row(path, kept, stale: kept?.IsFresh(HouseStamp.Of(path)) != true);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new FirmRow(path, kept?.Summary, failed.Message, Stale: false);
        }
    }

    /// <summary>The rows of many houses by what is kept, in their order.</summary>
    public static FirmRow[] Kept(IReadOnlyList<string> paths)
    {
        var rows = new FirmRow[paths.Count];
        Parallel.For(0, paths.Count, at => rows[at] = Kept(paths[at]));
        return rows;
    }

    /// <summary>Each house once: of copies that begin with the same change the one with the most changes, which names the others.</summary>
    /// <remarks>Of two with as many the one that was written later; what is in the others alone comes in by a merge.</remarks>
    public static IReadOnlyList<FirmRow> Once(IReadOnlyList<FirmRow> rows)
    {
        var copies = rows.Where(r => r.Summary is { Begun.Length: > 0 }).GroupBy(r => r.Summary!.Begun).Where(g => g.Skip(1).Any())
            .ToDictionary(g => g.Key, g => g.OrderByDescending(r => r.Summary!.Changes).ThenByDescending(r => FoundFiles.Changed(r.Path)).ToList());
        return copies.Count == 0 ? rows
            : [.. rows.Select(r => r.Summary is not { } s || !copies.TryGetValue(s.Begun, out var same) ? r
                : r == same[0] ? r with { Copies = [.. same.Skip(1).Select(c => c.Path)] } : null).OfType<FirmRow>()];
    }

    /// <summary>The row of a house that is opened for it, only to be looked at; what comes of that is kept.</summary>
    public static FirmRow MakeAnew(string path)
    {
        try
        {
            // Before the house is read: what is written meanwhile makes the summary a stale one, never a wrong one.
            var stamp = HouseStamp.Of(path);
            SummaryFile made;
            try
            {
                var (log, remarks, inDoubt) = HouseSource.Read(path, goOn: false, aloud: false);
                made = new SummaryFile(SummaryFile.ThisProgram, stamp, HouseSummary.Of(log, CheckReport.Of(log.House)), null,
                    [.. remarks, .. NotCounted.Of(log)], inDoubt is not null, HeldChanges.Of(log.Changes.Select(c => c.Id)).ToString());
            }
            catch (Exception failed) when (ExitCode.Of(failed) is not null)
            {
                // In a list nobody expects that looking changes something.
                made = new SummaryFile(SummaryFile.ThisProgram, stamp, null, failed.Message.Replace(" Nothing was changed.", "", StringComparison.Ordinal),
                    [], false, "");
            }
            made.Write(path);
            return Row(path, made, stale: false);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            return new FirmRow(path, null, failed.Message, Stale: false);
        }
    }

    private static FirmRow Row(string path, SummaryFile? from, bool stale) =>
        new(path, from?.Summary, from?.Why, stale) { Remarks = from?.Remarks ?? [], InDoubt = from?.InDoubt == true, Held = from?.Held ?? "" };
}

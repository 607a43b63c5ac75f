namespace TrimOut.HouseFile.Backups;

/// <summary>
/// Which backups of a house are kept: the latest three, the last of each of the latest fourteen days that have any, the last of each of
/// the latest thirteen weeks that have any, the last of each month for ever.
/// </summary>
/// <remarks>
/// Latest is what was saved last, whatever the clock said; and days are counted by the backups there are, not back from now. So a clock
/// that is years ahead for a day costs at most the oldest day and the oldest week; and while it jumps, nothing goes.
/// </remarks>
public static class BackupRule
{
    private const int Latest = 3;
    private const int Days = 14;
    private const int Weeks = 13;

    /// <summary>Longer than most houses rest between two visits: a clock that went on by more may be wrong.</summary>
    private static readonly TimeSpan Jump = TimeSpan.FromDays(60);

    /// <summary>The backups that may go.</summary>
    /// <param name="all">All backups, the one that was made last among them.</param>
    public static IReadOnlyList<Backup> ToDrop(IEnumerable<Backup> all)
    {
        var saved = all.OrderDescending(Backup.BySaving).ToList();
        if (saved.Count < 2 || saved[0].MadeAt < saved[1].MadeAt || saved[0].MadeAt - saved[1].MadeAt > Jump)
            return [];
        var kept = saved.Take(Latest)
            .Concat(LastOfEach(saved, t => t.Date).Take(Days))
            .Concat(LastOfEach(saved, Monday).Take(Weeks))
            .Concat(LastOfEach(saved, t => new DateTime(t.Year, t.Month, 1)))
            .ToHashSet();
        return [.. saved.Where(b => !kept.Contains(b))];
    }

    /// <summary>What was saved last in each period, the period that was saved in last first.</summary>
    private static IEnumerable<Backup> LastOfEach(List<Backup> saved, Func<DateTime, DateTime> period) => saved.DistinctBy(b => period(b.MadeAt));

    private static DateTime Monday(DateTime time) => time.Date.AddDays(-(((int)time.DayOfWeek + 6) % 7));
}

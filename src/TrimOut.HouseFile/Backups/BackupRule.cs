namespace TrimOut.HouseFile.Backups;

/// <summary>Which backups of a house are kept: the latest three, the last of each day for two weeks, the last of each week for three months, the last of each month for ever.</summary>
public static class BackupRule
{
    private const int Latest = 3;
    private const int Days = 14;
    private const int Weeks = 13;

    /// <summary>The backups that may go.</summary>
    /// <param name="made">When each backup was made, in universal time.</param>
    /// <param name="now">Now, in universal time.</param>
    public static IReadOnlyList<DateTime> ToDrop(IEnumerable<DateTime> made, DateTime now)
    {
        var all = made.OrderDescending().ToList();
        var kept = all.Take(Latest)
            .Concat(LastOfEach(all.Where(t => now - t < TimeSpan.FromDays(Days)), t => t.Date))
            .Concat(LastOfEach(all.Where(t => now - t < TimeSpan.FromDays(7 * Weeks)), Monday))
            .Concat(LastOfEach(all, t => new DateTime(t.Year, t.Month, 1)))
            .ToHashSet();
        return [.. all.Where(t => !kept.Contains(t))];
    }

    private static IEnumerable<DateTime> LastOfEach(IEnumerable<DateTime> times, Func<DateTime, DateTime> period) => times.GroupBy(period).Select(g => g.Max());

    private static DateTime Monday(DateTime time) => time.Date.AddDays(-(((int)time.DayOfWeek + 6) % 7));
}

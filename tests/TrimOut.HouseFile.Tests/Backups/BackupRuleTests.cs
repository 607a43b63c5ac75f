using TrimOut.HouseFile.Backups;

namespace TrimOut.HouseFile.Tests.Backups;

public class BackupRuleTests
{
    private static readonly DateTime Now = new(2026, 6, 24, 18, 0, 0, DateTimeKind.Utc);

    /// <summary>What is kept of a backup every six hours over so many days.</summary>
    private static List<DateTime> Kept(int days)
    {
        var all = Enumerable.Range(0, days * 4).Select(n => Now.AddHours(-6 * n)).ToList();
        var drop = BackupRule.ToDrop(all, Now).ToHashSet();
        return [.. all.Where(t => !drop.Contains(t))];
    }

    [Fact]
    public void TheLatestThreeStay() => Assert.Equal([Now, Now.AddHours(-6), Now.AddHours(-12)], Kept(30).Take(3));

    [Fact]
    public void OneADayStaysForTwoWeeks() => Assert.Equal(14, Kept(30).Select(t => t.Date).Count(d => Now.Date - d < TimeSpan.FromDays(14)) - 2);

    [Fact]
    public void ThereIsAlwaysOneNoMoreThanAWeekApartForThreeMonthsAndAMonthApartBefore()
    {
        var kept = Kept(700);
        foreach (var (later, earlier) in kept.Zip(kept.Skip(1)))
            Assert.InRange((later - earlier).TotalDays, 0, Now - later < TimeSpan.FromDays(84) ? 8 : 31);
    }

    [Fact]
    public void TwoYearsOfWorkKeepFewerThanSixty() => Assert.InRange(Kept(730).Count, 40, 60);

    [Fact]
    public void NothingThatWasKeptAndIsStillYoungestOfItsMonthEverGoes() => Assert.Empty(BackupRule.ToDrop([Now.AddYears(-3)], Now));
}

using TrimOut.HouseFile.Backups;

namespace TrimOut.HouseFile.Tests.Backups;

public class BackupRuleTests
{
    private static readonly DateTime Now = new(2026, 6, 24, 18, 0, 0, DateTimeKind.Utc);

    /// <summary>Backups at these times, in the order of saving.</summary>
    private static List<Backup> Saved(IEnumerable<DateTime> times) => [.. times.Select((t, at) => new Backup($"{at}", t, at + 1))];

    /// <summary>What is left when the rule is kept after each backup.</summary>
    private static List<DateTime> Left(IEnumerable<DateTime> times)
    {
        var there = new List<Backup>();
        foreach (var backup in Saved(times))
        {
            there.Add(backup);
            var drop = BackupRule.ToDrop(there).ToHashSet();
            there.RemoveAll(drop.Contains);
        }
        return [.. there.OrderDescending(Backup.BySaving).Select(b => b.MadeAt)];
    }

    /// <summary>What is kept of a backup every six hours over so many days.</summary>
    private static List<DateTime> Kept(int days) => Left(Enumerable.Range(0, days * 4).Select(n => Now.AddHours(-6 * n)).Reverse());

    private static IEnumerable<DateTime> Daily(int days) => Enumerable.Range(0, days).Select(n => Now.AddDays(n));

    [Fact]
    public void TheLatestThreeStay() => Assert.Equal([Now, Now.AddHours(-6), Now.AddHours(-12)], Kept(30).Take(3));

    [Fact]
    public void OneADayStaysForTwoWeeks() => Assert.Equal(14, Kept(30).Select(t => t.Date).Count(d => Now.Date - d < TimeSpan.FromDays(14)) - 2);

    [Fact]
    public void ThereIsAlwaysOneNoMoreThanAWeekApartForThreeMonthsAndAMonthApartBefore()
    {
        var kept = Kept(700);
        foreach (var (later, earlier) in kept.Zip(kept.Skip(1)))
            Assert.InRange((later - earlier).TotalDays, 0, Now - later < TimeSpan.FromDays(77) ? 8 : 31);
    }

    [Fact]
    public void TwoYearsOfWorkKeepFewerThanSixty() => Assert.InRange(Kept(730).Count, 40, 60);

    [Fact]
    public void ASingleBackupNeverGoes() => Assert.Empty(BackupRule.ToDrop(Saved([Now.AddYears(-3)])));

    [Theory]
    [InlineData(730)]
    [InlineData(-730)]
    public void AStartWithAWrongClockLetsNothingGoAndALaterOneNoMoreThanItsOwnPlace(int daysOff)
    {
        var eight = Daily(8).ToList();
        var wrong = Now.AddDays(8 + daysOff);
        Assert.Equal(9, Left([.. eight, wrong]).Count);
        var after = Left([.. eight, wrong, Now.AddDays(9), Now.AddDays(10)]);
        Assert.All(eight, day => Assert.Contains(day, after));
    }

    [Fact]
    public void ABackupOfAClockThatWasYearsAheadIsNotTakenForTheLatest()
    {
        var times = Daily(3).Append(Now.AddYears(9)).Concat(Daily(40).Select(d => d.AddDays(4)));
        Assert.Equal(Now.AddDays(43), Left(times)[0]);
        Assert.Equal([Now.AddDays(43), Now.AddDays(42), Now.AddDays(41)], Left(times).Take(3));
    }

    [Fact]
    public void BackupsOfATimeBeforeTheNumbersAreOrderedByTheirDates()
    {
        List<Backup> old = [new("a", Now, 0), new("b", Now.AddDays(1), 0), new("c", Now.AddDays(-1), 1)];
        Assert.Equal(["c", "b", "a"], old.OrderDescending(Backup.BySaving).Select(b => b.Path));
    }
}

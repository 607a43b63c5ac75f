using TrimOut.Core.Facts;
using TrimOut.HouseFile;
using TrimOut.Testing;

namespace TrimOut.Tests.Verbs;

/// <summary>What houses took, and what the next one is likely to take by them: the figures are worked out by hand here.</summary>
public sealed class HoursVerbTests : IDisposable
{
    private static readonly string[] Hung =
        ["brackets-fixed", "centre-support-clear", "lead-in-front", "clicked-in", "cords-safe", "moves-free"];

    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    /// <summary>A house with so many units; where something is said of the hours of hanging, all of them hang: so many, or nothing but the marks.</summary>
    private void House(string file, int units, string? hang = null)
    {
        var job = new TestJob(store: new MemoryStore(Path.GetFileNameWithoutExtension(file)));
        foreach (var at in Enumerable.Range(1, units))
            job.Window($"W{at:00}");
        if (hang is not null)
        {
            foreach (var tag in job.House.Units.Select(u => u.Tag))
                _ = Hung.Aggregate(job, (j, step) => j.Mark(tag, step));
            if (hang.Length > 0)
                job.SayOf("", HouseFacts.HoursHang, hang);
        }
        HouseOnDisk.Create(_run.In(file), TimeProvider.System, job.Scribe.Log.Changes).Dispose();
    }

    private string[] Lines(string verb, params string[] arguments) =>
        _run.Run([verb, .. arguments]).Output.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);

    // 6 h / 2 units = 3, 5 h / 1 = 5, 40 h / 4 = 10 hours a unit: least 3, middle 5, most 10. For 3 units 3 * 5 = 15, at least 9, at most 30.
    [Fact]
    public void ANextHouseIsEstimatedByTheHoursAUnitOfTheOthers()
    {
        House("alder.trimout", 2, "6");
        House("birch.trimout", 1, "5");
        House("cedar.trimout", 4, "40");
        House("next.trimout", 3);
        var said = Lines("hours", "alder.trimout", "birch.trimout", "cedar.trimout", "--for", "next.trimout");
        Assert.Equal(["6 3", "5 5", "40 10"], said.Select(l => l.Split('\t')).Where(c => c[0] == "house" && c[2] == "hang").Select(c => $"{c[3]} {c[10]}"));
        Assert.Contains("rate\thang\t5\t3\t10\t3\t0\t", said);
        Assert.Contains("estimate\thang\t3\t15\t9\t30\t3\t", said);
        Assert.Contains("not-known\trough-in\t3\tnot known: no house is through it", said);
        Assert.DoesNotContain(said, l => l.StartsWith("not-known\thang", StringComparison.Ordinal));
    }

    // The house itself says nothing about itself: of 3 and 5 hours a unit the middle is 4, and for its 4 units that is 16, not what it took.
    [Fact]
    public void AHouseIsNotEstimatedByItselfOrByACopyTwice()
    {
        House("alder.trimout", 2, "6");
        House("birch.trimout", 1, "5");
        House("cedar.trimout", 4, "40");
        File.Copy(_run.In("alder.trimout"), _run.In("alder-copy.trimout"));
        var ended = _run.Run("hours", "alder.trimout", "alder-copy.trimout", "birch.trimout", "cedar.trimout", "--for", "cedar.trimout");
        Assert.Contains("estimate\thang\t4\t16\t12\t20\t2\t", ended.Output, StringComparison.Ordinal);
        Assert.Contains("alder-copy.trimout is a copy of a house", ended.Error, StringComparison.Ordinal);
    }

    // Six marks a minute from each other are five minutes: 0.08 hours, the least that it can have been.
    [Fact]
    public void OfOneHouseThatIsOnlyMarkedTheEstimateIsAtLeastSoMuchAndSaysThatItIsFromOne()
    {
        House("alder.trimout", 1, "");
        House("next.trimout", 3);
        var ended = _run.Run("hours", "alder.trimout", "--for", "next.trimout");
        Assert.Contains("estimate\thang\t3\t0.25\t0.25\t0.25\t1\tat-least", ended.Output, StringComparison.Ordinal);
        Assert.Contains("All of this is from one house alone.", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void WhereNoHouseIsThroughNothingIsEstimatedAndThatIsSaid()
    {
        House("alder.trimout", 2);
        House("next.trimout", 3);
        var ended = _run.Run("hours", "alder.trimout", "--for", "next.trimout");
        Assert.DoesNotContain("estimate\t", ended.Output, StringComparison.Ordinal);
        Assert.Contains("not-known\thang\t3\tnot known: no house is through it", ended.Output, StringComparison.Ordinal);
        Assert.Contains("nothing can be said of the next one", ended.Error, StringComparison.Ordinal);
    }
}

using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.Tests.SampleJobs;

public class ArchitectScheduleTests
{
    private static readonly byte[] File = System.IO.File.ReadAllBytes(SampleJob.Open("ridge-house").In("architect-schedule.csv"));
    private readonly TestJob _job = new();
    private readonly SchedulePlan _plan;

    public ArchitectScheduleTests()
    {
        _plan = ScheduleImport.Plan(_job.Scribe.Log, File, "architect-schedule.csv", ScheduleOptions.ByHeaders).Value;
        _job.Do(_plan.Draft);
    }

    [Fact]
    public void ItIsExportedAsOfficesDo()
    {
        Assert.Equal([0xef, 0xbb, 0xbf], File.Take(3));
        var text = System.Text.Encoding.UTF8.GetString(File);
        Assert.Equal(text.Count(c => c == '\n'), text.Split("\r\n").Length - 1);
    }

    [Fact]
    public void WhatCanNotBeReadIsListedByLineAndColumn() =>
        Approved.Match(string.Concat(_plan.Problems.Select(p => $"line {p.Line}, {p.Column}: {p.Reason}{(p.RowLost ? " The row is left out." : "")}\n")),
            "architect-schedule-problems");

    [Fact]
    public void TheRestIsNotLost()
    {
        Assert.Equal(Enumerable.Range(1, 18).Select(n => $"W{n:00}"), _job.House.Windows.Select(w => w.Tag).Order(StringComparer.Ordinal));
        Assert.Equal(Length.FromInches(45, 1, 2), _job.House.FindTag("W18")!.RoughWidth);
        Assert.Equal(Length.FromInches(24, 3, 4), _job.House.FindTag("W18")!.RoughHeight);
        Assert.Equal(["Living room", "Kitchen", "Stair landing", "Main bedroom", "Bath", "Guest room", "Study", "Wing hall", "Store"],
            _job.House.Rooms.Select(r => r.Name));
    }

    [Fact]
    public void AValueThatCanNotBeReadIsLeftOpenAndItsWindowKept()
    {
        Assert.Null(_job.House.FindTag("W10")!.RoughHeight);
        Assert.Equal(Length.FromInches(30), _job.House.FindTag("W10")!.RoughWidth);
        Assert.Null(_job.House.FindTag("W17")!.RoughHeight);
    }

    [Fact]
    public void TheRowOfTotalsIsNoWindow() => Assert.Contains(_plan.Understood, u => u.Contains("totals", StringComparison.Ordinal));
}

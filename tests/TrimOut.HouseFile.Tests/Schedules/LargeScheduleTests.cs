using System.Text;
using TrimOut.Core;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

/// <summary>Files that are no house's schedule by their size are refused with a reason, and before they take the machine's memory.</summary>
public class LargeScheduleTests
{
    private static Result<SchedulePlan> Plan(string text) =>
        ScheduleImport.Plan(new TestJob().Scribe.Log, Encoding.UTF8.GetBytes(text), "s.csv", ScheduleOptions.ByHeaders);

    private static string Rows(int count, string rest) => "tag,width\n" + string.Concat(Enumerable.Range(1, count).Select(n => $"W{n}{rest}\n"));

    [Fact]
    public void AMillionRowsAreRefused()
    {
        var text = Rows(1_000_000, ",30");
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Contains("more than 5000 rows", Plan(text).Reason, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 200_000_000);
    }

    [Fact]
    public void ACellOfMegabytesIsRefusedWithItsLine() =>
        Assert.StartsWith("Line 3: a cell has more than", Plan($"tag,width\nW01,30\nW02,{new string('x', 4_000_000)}\n").Reason, StringComparison.Ordinal);

    [Fact]
    public void AQuantityCannotMakeMoreWindowsThanRowsMay() =>
        Assert.Contains("more than 5000 windows", Plan("tag,qty,width\n" + string.Concat(Enumerable.Range(1, 60).Select(n => $"W{n},99,30\n"))).Reason,
            StringComparison.Ordinal);

    [Fact]
    public void AsManyWindowsAsAnyHouseHasAreRead() => Assert.Equal(2_000, Plan(Rows(2_000, ",30")).Value.Windows.Length);
}

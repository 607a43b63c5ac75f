using System.Text;
using TrimOut.Core.Facts;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

public class WindowTableTests
{
    [Fact]
    public void WindowsGoOutAndComeInAgain()
    {
        var job = new TestJob().Room("Kitchen", "Main").Window("W01")
            .Say("W01", WindowFacts.RoughWidth, "45 1/2").Say("W01", WindowFacts.RoughHeight, "1156.5 mm").Say("W01", WindowFacts.Facing, "225")
            .Say("W01", WindowFacts.Reach, "ladder").Say("W01", WindowFacts.Mount, "inside").Say("W01", WindowFacts.Note, "=SUM(A1), \"or so\"; ünusual")
            .Window("W02", "Den", "Wood blind");
        var table = WindowTable.Write(job.House);
        var plan = ScheduleImport.Plan(new TestJob().House, Encoding.UTF8.GetBytes(table), "windows.csv", ScheduleOptions.ByHeaders).Value;
        Assert.Empty(plan.Problems);
        Assert.Empty(plan.Unused);
        Assert.Equal(table, WindowTable.Write(new TestJob().Do(plan.Draft).House));
        Assert.Contains("\"'=SUM(A1), \"\"or so\"\"; ünusual\"", table);
        Assert.Contains("\"45 1/2\"\"\"", table);
    }
}

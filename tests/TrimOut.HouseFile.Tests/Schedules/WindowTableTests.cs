using System.Text;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.HouseFile.Schedules;
using TrimOut.HouseFile.Texts;
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
        var plan = ScheduleImport.Plan(new TestJob().Scribe.Log, Encoding.UTF8.GetBytes(table), "windows.csv", ScheduleOptions.ByHeaders).Value;
        Assert.Empty(plan.Problems);
        Assert.Empty(plan.Unused);
        Assert.Equal(table, WindowTable.Write(new TestJob().Do(plan.Draft).House));
        Assert.Contains("\"'=SUM(A1), \"\"or so\"\"; ünusual\"", table);
        Assert.Contains("\"45 1/2\"\"\"", table);
    }

    [Fact]
    public void LeadSidePowerAndWhatIsLeftOutGoOutAndComeInAgain()
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.LeadSide, "left").Say("W01", UnitFacts.Power, "battery")
            .Window("W02").Say("W02", WindowFacts.Covered, "no").Say("W02", WindowFacts.NotCoveredBecause, "faces a wall, \"blind\"")
            .Window("W03").Say("W03", WindowFacts.Covered, "no");
        var table = WindowTable.Write(job.House);
        var plan = ScheduleImport.Plan(new TestJob().Scribe.Log, Encoding.UTF8.GetBytes(table), "w.csv", ScheduleOptions.ByHeaders).Value;
        var back = new TestJob().Do(plan.Draft).House;
        Assert.Equal(table, WindowTable.Write(back));
        Assert.Equal([false, true, true], back.Windows.Select(w => w.LeftOut));
        Assert.Equal("faces a wall, \"blind\"", back.FindTag("W02")!.Show(WindowFacts.NotCoveredBecause));
        Assert.Equal(("left", "battery"), (back.Units[0].Show(UnitFacts.LeadSide), back.Units[0].Show(UnitFacts.Power)));
    }

    [Fact]
    public void ACellBehindTheLastHeaderIsToldOf()
    {
        var plan = ScheduleImport.Plan(new TestJob().Scribe.Log, "Tag,Note\nW01,left, tight\nW02,right,\n"u8.ToArray(), "w.csv",
            ScheduleOptions.ByHeaders).Value;
        var said = Assert.Single(plan.Problems);
        Assert.Equal((2, "behind the last"), (said.Line, said.Column));
        Assert.StartsWith("\"tight\" has no header.", said.Reason, StringComparison.Ordinal);
    }

    public static TheoryData<string> Samples => [.. Directory.GetDirectories(Path.Combine(Repository.Root, "sample-jobs")).Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Samples))]
    public void TheWindowsOfASampleJobGoOutAndComeInAgainWithoutLoss(string name)
    {
        var log = HistoryText.Read(File.ReadAllText(Path.Combine(Repository.Root, "sample-jobs", name, HistoryText.FileName))).Value;
        var table = WindowTable.Write(log.House);
        var job = new TestJob(store: new MemoryStore("office", log.Changes));
        foreach (var item in log.House.Windows.Select(w => w.Item).Concat(log.House.Rooms.Select(r => r.Item)))
            job.Do(RemoveItems.Remove(job.House, item).Value);
        Assert.Empty(job.House.Windows);
        var plan = ScheduleImport.Plan(job.Scribe.Log, Encoding.UTF8.GetBytes(table), "windows.csv", ScheduleOptions.ByHeaders).Value;
        Assert.Empty(plan.Problems);
        Assert.Equal(log.House.Windows.Length, plan.Windows.Length);
        Assert.Equal(table, WindowTable.Write(job.Do(plan.Draft).House));
    }

    /// <summary>The beginnings that a spreadsheet takes for a formula (OWASP, CSV injection), and texts that look as if they were guarded already.</summary>
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@x", "'@x")]
    [InlineData("'=1+1", "''=1+1")]
    [InlineData("''-1", "'''-1")]
    [InlineData("'tis tight", "'tis tight")]
    public void ANoteThatLooksLikeAFormulaIsGuardedAndComesBackToTheLetter(string note, string cell)
    {
        var table = WindowTable.Write(new TestJob().Window("W01").Say("W01", WindowFacts.Note, note).House);
        Assert.EndsWith("," + cell + "\r\n", table.Replace("\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
        var plan = ScheduleImport.Plan(new TestJob().Scribe.Log, Encoding.UTF8.GetBytes(table), "windows.csv", ScheduleOptions.ByHeaders).Value;
        Assert.Equal(note, new TestJob().Do(plan.Draft).House.FindTag("W01")!.Show(WindowFacts.Note));
    }

    /// <summary>
    /// RFC 4180, section 2: rows end with CR LF and have as many cells each; a comma or a quote puts a cell in quotes, and a quote is doubled.
    /// </summary>
    [Fact]
    public void TheTableKeepsToTheStandard()
    {
        var table = WindowTable.Write(new TestJob().Window("W01").Say("W01", WindowFacts.Note, "left, \"tight\"").Window("W02").House);
        var rows = table.Split("\r\n");
        Assert.Equal("", rows[^1]);
        Assert.DoesNotContain('\n', string.Concat(rows));
        Assert.EndsWith(",\"left, \"\"tight\"\"\"", rows[1]);
        Assert.Equal(12, rows[2].Count(c => c == ','));
    }
}

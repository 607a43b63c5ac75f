using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.HouseFile.Schedules;
using TrimOut.Papers;
using TrimOut.Screens.Frames;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Rooms;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Walk;
using TrimOut.Testing;

namespace TrimOut.Tests;

/// <summary>The order in which rooms and windows are walked is that of every list and every paper.</summary>
public class WalkingOrderTests
{
    private static readonly DateOnly Day = new(2026, 9, 7);

    /// <summary>Papers that list by something else: outputs of a panel, parts, sides of the house.</summary>
    private static readonly string[] ListOtherThings = ["panel-schedule", "panel-door", "card", "sun-sheet", "work-plan"];

    private readonly TestJob _job = Moved();

    /// <summary>Six windows in three rooms that were walked otherwise than they were added: floors, rooms and windows moved.</summary>
    private static TestJob Moved()
    {
        var job = new TestJob().Room("Kitchen", "Main").Room("Hall", "Main").Room("Study", "Upper");
        foreach (var (tag, room) in new[] { ("Q1", "Kitchen"), ("Q2", "Kitchen"), ("Q3", "Hall"), ("Q4", "Hall"), ("Q5", "Study"), ("Q6", "Study") })
            job.Window(tag, room);
        job.Do(j => WalkingOrder.Move(j.House.Rooms.Single(r => r.Name == "Hall"), -1)).Do(j => WalkingOrder.MoveFloor(j.House, "Upper", -1))
            .Do(j => WalkingOrder.Move(j.House.FindTag("Q6")!, -1)).Do(j => WalkingOrder.Move(j.House.FindTag("Q4")!, -1));
        job.Add(ItemKind.Panel, "P1").Add(ItemKind.Remote, "R1");
        foreach (var unit in job.House.Units.Select(u => u.Tag).Reverse().ToList())
        {
            job.Say(unit, UnitFacts.OrderedOn, "2026-08-01").Say(unit, UnitFacts.ExpectedOn, "2026-08-20").Say(unit, UnitFacts.OpenGap, "0")
                .Legs(unit, ("10 ft", CablePlace.InWall)).Say(unit, RunFacts.Cable, "16/2").Say(unit, RunFacts.LabelAtWindow, $"label of {unit}");
            job.Do(Controls.Toggle(job.House.Remotes[0], job.Unit(unit)));
        }
        return job;
    }

    private static readonly string[] Walked = ["Q6", "Q5", "Q4", "Q3", "Q1", "Q2"];

    [Fact]
    public void TheHouseIsWalkedAsItWasMoved() => Assert.Equal(Walked, _job.House.Units.Select(u => u.Tag));

    public static TheoryData<string> Papers => [.. PaperList.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void EveryTableOfAPaperThatListsWindowsIsInThatOrder(string id)
    {
        var markdown = PaperList.Find(id)!.Write(new PaperData(_job.Scribe.Log, Day, CheckReport.Of(_job.House))).Markdown;
        var tables = TagsByTable(markdown).Where(t => t.Count > 1).ToList();
        Assert.Equal(ListOtherThings.Contains(id), tables.Count == 0);
        Assert.All(tables, table => Assert.Equal(Walked.Where(table.Contains), table.Distinct()));
        // Headings of rooms and windows too, where a paper goes through them.
        var headings = markdown.Split('\n').Where(l => l.StartsWith('#')).SelectMany(l => Walked.Where(t => l.TrimEnd().EndsWith(t, StringComparison.Ordinal)))
            .ToList();
        Assert.Equal(Walked.Where(headings.Contains), headings.Distinct());
    }

    [Fact]
    public void EveryScreenThatListsWindowsIsInThatOrder()
    {
        var context = new ScreenContext(_job.Scribe, [], new DateTimeOffset(Day, default, default), Glyphs.Drawn);
        string Tag(string id) => context.House.FindUnit(id)?.Tag ?? context.House.FindWindow(id)!.Tag;
        Assert.Equal(Walked, JobSheetRows.Ids(JobSheetScreen.At(context), context).Select(Tag));
        Assert.Equal(Walked, RoomRows.Of(context.House).Where(r => r.Window is not null).Select(r => r.Window!.Tag));
        Assert.Equal(Walked, context.House.Runs.Select(r => r.Unit.Tag));
        foreach (var phase in PhaseNames.All.Where(p => p is not (Phase.Power or Phase.Handover)))
            Assert.Equal(Walked, WalkOrder.Subjects(context, phase).OfType<Unit>().Select(u => u.Tag));
        Assert.Equal(Walked, context.House.Remotes[0].Units.Select(u => u.Tag));
        Assert.Equal(Walked, Core.Plans.Deliveries.AwaitedBox.Of(context.House, context.Report, Day).Select(b => b.Unit.Tag));
    }

    [Fact]
    public void TheListOfWindowsForOtherProgramsIsInThatOrder()
    {
        var rows = WindowTable.Write(_job.House).ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Walked, rows.Skip(1).Select(r => r.Split(',')[0]));
    }

    /// <summary>The tags that the rows of each table begin with.</summary>
    private static List<List<string>> TagsByTable(string markdown)
    {
        var tables = new List<List<string>> { new() };
        foreach (var line in markdown.Split('\n'))
        {
            if (!line.StartsWith('|'))
                tables.Add([]);
            else if (Walked.FirstOrDefault(t => line[1..].TrimStart().StartsWith(t + " ", StringComparison.Ordinal)) is { } tag)
                tables[^1].Add(tag);
        }
        return tables;
    }
}

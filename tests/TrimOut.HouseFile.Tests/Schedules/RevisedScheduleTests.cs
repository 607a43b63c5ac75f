using System.Text;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

/// <summary>A schedule comes again, revised: nothing that somebody typed or measured here is overwritten, and all that differs is said.</summary>
public class RevisedScheduleTests
{
    private const string First = "tag,room,width,height,facing\nW01,Kitchen,36,48,S\nW02,Kitchen,30,48,S\nW03,Den,30,40,\n";

    private readonly TestJob _job = new();

    public RevisedScheduleTests() => _job.Do(Plan(First, revised: false).Draft);

    private SchedulePlan Plan(string csv, bool revised = true) =>
        ScheduleImport.Plan(_job.Scribe.Log, Encoding.UTF8.GetBytes(csv), "r.csv", ScheduleOptions.ByHeaders with { Revised = revised }).Value;

    private Length Width(string tag) => _job.House.FindTag(tag)!.RoughWidth!.Value;

    [Fact]
    public void TheSameScheduleChangesNothing()
    {
        var plan = Plan(First);
        Assert.False(plan.Changes);
        Assert.Empty(plan.Revised);
        Assert.Empty(plan.Missing);
    }

    [Fact]
    public void WhatAnImportBroughtIsRenewedNewWindowsComeAndThoseThatAreGoneAreNamed()
    {
        var plan = Plan("tag,room,width,height,facing\nW01,Kitchen,40,48,S\nW03,Study,30,40,N\nW04,Den,20,20,\n");
        Assert.Equal("W02", Assert.Single(plan.Missing));
        Assert.Equal(["W04"], plan.Windows.Select(w => w.Tag));
        Assert.Equal([("W01", "36\"", "40\"", null), ("W03", "", "N", null), ("W03", "Den", "Study", null)],
            plan.Revised.Select(r => (r.Tag, r.Here, r.There, r.KeptBecause)));
        _job.Do(plan.Draft);
        Assert.Equal(Length.FromInches(40), Width("W01"));
        Assert.Equal("Study", _job.House.FindTag("W03")!.Room!.Name);
        Assert.Equal(["W01", "W02", "W03", "W04"], _job.House.Windows.Select(w => w.Tag).Order());
    }

    private const string Second = "tag,room,width,height,facing\nW01,Kitchen,40,48,S\nW03,Study,31,40,\nW04,Attic,20,20,\n";

    private static readonly DateOnly Today = new(2026, 3, 5);

    [Fact]
    public void ARowThatIsLeftNeitherAddsNorRenewsAndBringsNoRoom()
    {
        var plan = Plan(Second).Choosing(_job.House, ["w04", "W03"], GoneAs.Left, Today).Value;
        Assert.Empty(plan.Windows);
        Assert.Empty(plan.NewRooms);
        Assert.Equal(["left, as you chose", "left, as you chose"], plan.Revised.Where(r => r.Tag == "W03").Select(r => r.KeptBecause));
        _job.Do(plan.Draft);
        Assert.Equal(("Import r.csv: 0 windows, 1 value of others", Length.FromInches(40), Length.FromInches(30)),
            (_job.Scribe.Log.Changes[^1].What, Width("W01"), Width("W03")));
        Assert.Equal(["Den", "Kitchen"], _job.House.Rooms.Select(r => r.Name).Order());
        Assert.Equal("The schedule brings nothing of W09: there is nothing to leave.", Plan(Second).Choosing(_job.House, ["W09"], GoneAs.Left, Today).Reason);
    }

    [Theory]
    [InlineData(GoneAs.Noted, "Gone from the schedule of 2026-03-05", false)]
    [InlineData(GoneAs.LeftOut, "", true)]
    [InlineData(GoneAs.Left, "", false)]
    public void WhatBecomesOfAWindowThatIsGoneIsChosen(GoneAs gone, string note, bool leftOut)
    {
        var plan = Plan(First.Replace("W02,Kitchen,30,48,S\n", "", StringComparison.Ordinal)).Choosing(_job.House, [], gone, Today).Value;
        Assert.Equal("W02", Assert.Single(plan.Missing));
        Assert.Equal(gone != GoneAs.Left, plan.Changes);
        if (plan.Changes)
            _job.Do(plan.Draft);
        var window = _job.House.FindTag("W02")!;
        Assert.Equal((note, leftOut), (window.Show(WindowFacts.Note), window.LeftOut));
        Assert.Equal(leftOut ? "gone from the schedule of 2026-03-05" : "", window.Show(WindowFacts.NotCoveredBecause));
        // The history still knows the change as an import: what it brought is renewed by the next one.
        Assert.Null(Plan(First.Replace("W01,Kitchen,36", "W01,Kitchen,44", StringComparison.Ordinal)).Revised.Single(r => r.Tag == "W01").KeptBecause);
    }

    /// <summary>From which day on it is gone stays; that it is back is said, and is for somebody to take out.</summary>
    [Fact]
    public void AWindowThatIsNotedAsGoneIsNotNotedAgain()
    {
        _job.Say("W02", WindowFacts.Note, "Owner asks for it.");
        var without = First.Replace("W02,Kitchen,30,48,S\n", "", StringComparison.Ordinal);
        _job.Do(Plan(without).Choosing(_job.House, [], GoneAs.Noted, Today).Value.Draft);
        const string noted = "Owner asks for it. Gone from the schedule of 2026-03-05";
        var again = Plan(without).Choosing(_job.House, [], GoneAs.Noted, Today.AddDays(7)).Value;
        Assert.False(again.Changes);
        Assert.Empty(again.Draft.Edits);
        Assert.Equal(noted, _job.House.FindTag("W02")!.Show(WindowFacts.Note));
        // With something else to take in it is no more than that.
        var more = Plan(without.Replace("W01,Kitchen,36", "W01,Kitchen,40", StringComparison.Ordinal)).Choosing(_job.House, [], GoneAs.Noted, Today.AddDays(7));
        _job.Do(more.Value.Draft);
        Assert.Equal((noted, "Import r.csv: 0 windows, 1 value of others"),
            (_job.House.FindTag("W02")!.Show(WindowFacts.Note), _job.Scribe.Log.Changes[^1].What));
        Assert.Contains("W02 is in the schedule, and its note says that it is gone from one", Plan(First).Understood);
        Assert.True(Plan(without).Choosing(_job.House, [], GoneAs.LeftOut, Today.AddDays(7)).Value.Changes);
    }

    [Fact]
    public void WhatSomebodyTypedStays()
    {
        _job.Say("W01", WindowFacts.RoughWidth, "36 1/2");
        var plan = Plan(First.Replace("W01,Kitchen,36", "W01,Kitchen,40", StringComparison.Ordinal));
        Assert.Contains("typed it on", Assert.Single(plan.Revised).KeptBecause, StringComparison.Ordinal);
        Assert.False(plan.Changes);
        Assert.Equal(Length.FromInches(36, 1, 2), Width("W01"));
    }

    /// <summary>What stands in the history of such a window begins as an import does.</summary>
    [Fact]
    public void WhatSomebodyTypedOfAWindowThatIsCalledImportStays()
    {
        _job.Window("Import bay").Say("Import bay", WindowFacts.RoughWidth, "36 1/2");
        Assert.StartsWith("Import bay: ", _job.Scribe.Log.Changes[^1].What, StringComparison.Ordinal);
        Assert.NotNull(Assert.Single(Plan("tag,width\nImport bay,40\n").Revised).KeptBecause);
    }

    [Fact]
    public void WhatWasMeasuredIsNotOverwrittenEither()
    {
        foreach (var fact in new[] { WindowFacts.WidthTop, WindowFacts.WidthMiddle, WindowFacts.WidthBottom })
            _job.Say("W01", fact, "35 1/2");
        var plan = Plan(First.Replace("W01,Kitchen,36", "W01,Kitchen,40", StringComparison.Ordinal));
        Assert.Equal("the finished opening was measured", Assert.Single(plan.Revised).KeptBecause);
        Assert.Equal(Length.FromInches(36), Width("W01"));
    }

    [Fact]
    public void OneMeasureOfTheFinishedOpeningIsEnoughToKeepBothRoughSizes()
    {
        _job.Say("W01", WindowFacts.HeightLeft, "47 3/4");
        var plan = Plan(First.Replace("W01,Kitchen,36,48", "W01,Kitchen,40,50", StringComparison.Ordinal));
        Assert.Equal(["the finished opening was measured", "the finished opening was measured"], plan.Revised.Select(r => r.KeptBecause));
        Assert.False(plan.Changes);
    }

    [Fact]
    public void WhatIsOnOrderIsNotMadeAnotherByASchedule()
    {
        _job.Say("W01", UnitFacts.OrderedOn, "2026-03-01");
        var plan = Plan("tag,room,width,height,facing,mount,kind\nW01,Kitchen,40,48,N,outside,Roller\n");
        Assert.Equal([("Rough width", true), ("Facing", false)],
            plan.Revised.Where(r => r.Here.Length > 0).Select(r => (r.Label, r.KeptBecause?.StartsWith("W01 is on order", StringComparison.Ordinal) == true)));
    }

    [Fact]
    public void WithoutThatWordATagThatIsThereIsLeftOutAsBefore() =>
        Assert.Equal(3, Plan(First, revised: false).Problems.Count(p => p.RowLost));

    /// <summary>A test in an odd dozen of random revisions: whatever was typed here stands after each.</summary>
    [Fact]
    public void NothingTypedIsEverLost()
    {
        var random = new Random(5);
        var typed = new Dictionary<string, Length>();
        for (var round = 0; round < 60; round++)
        {
            var tag = $"W0{random.Next(1, 4)}";
            if (random.Next(3) == 0)
            {
                var width = Length.FromInches(random.Next(20, 60));
                _job.Say(tag, WindowFacts.RoughWidth, width.Show(DisplayUnits.Inches));
                typed[tag] = width;
            }
            if (Plan($"tag,width\n{tag},{random.Next(20, 60)}\n") is { Changes: true } plan)
                _job.Do(plan.Draft);
            Assert.All(typed, t => Assert.Equal(t.Value, Width(t.Key)));
        }
    }
}

using System.Text;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
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
        // Nothing of it comes by itself; who takes the row has what the schedule says.
        Assert.False(plan.Changes);
        Assert.Equal("1016 mm", Assert.IsType<Edit.Put>(Assert.Single(plan.Revised.Single().Edits)).Value);
        Assert.False(plan.Changes);
        Assert.Equal(Length.FromInches(36, 1, 2), Width("W01"));
    }

    /// <summary>
    /// An office swaps two tags: each row is of the other opening. Taken value by value two windows would be mixed, so nothing is, and it is said.
    /// </summary>
    [Theory]
    [InlineData("A1,Kitchen,47 1/2,60,right\nA2,Kitchen,35 3/8,60,left\nA3,Den,40,40,left\n", "A1, A2")]
    [InlineData("A1,Den,40,40,left\nA2,Kitchen,35 3/8,60,left\nA3,Kitchen,47 1/2,60,right\n", "A1, A2, A3")]
    [InlineData("A1,Kitchen,47 1/2,60,right\nA2,Kitchen,36,60,left\nA3,Den,40,40,left\n", "A1, A2")]
    [InlineData("A1,Hall,24,24,left\nA2,Kitchen,35 3/8,60,left\nA3,Kitchen,47 1/2,60,right\n", "A1, A2, A3")]
    [InlineData("A1,Bath,24,24,left\nA2,Kitchen,35 3/8,60,left\nA3,Kitchen,47 1/2,60,right\nA4,Den,40,40,left\n", "A1, A2, A3")]
    [InlineData("A1,Kitchen,47 1/2,60,right\nA2,Den,40,40,left\n", "A1, A2")]
    [InlineData("A1,Kitchen,35 3/8,60,left\nA2,Den,40,40,left\n", "A2")]
    [InlineData("A1,Kitchen,47 1/2,60,right\nA2,Kitchen,47 1/2,60,right\nA3,Den,40,40,left\n", null)]
    [InlineData("A1,Kitchen,36,60,left\nA2,Kitchen,48,60,right\nA3,Den,40,41,left\n", null)]
    public void OfWindowsThatHaveChangedPlacesNothingIsTaken(string rows, string? swapped)
    {
        const string head = "tag,room,width,height,lead side\n";
        _job.Do(Plan($"{head}A1,Kitchen,35 3/8,60,left\nA2,Kitchen,47 1/2,60,right\nA3,Den,40,40,left\n").Draft);
        var plan = Plan(head + rows);
        Assert.Equal(swapped is not null, plan.Understood.Any(u => u.Contains("changed places in the schedule", StringComparison.Ordinal)));
        if (swapped is null)
        {
            Assert.All(plan.Revised, r => Assert.Null(r.KeptBecause));
            return;
        }
        Assert.Contains(plan.Understood, u => u.StartsWith($"{swapped} ha", StringComparison.Ordinal));
        Assert.All(plan.Revised, r => Assert.NotNull(r.KeptBecause));
        // No room comes in which nothing is, and it does with the row that somebody takes all the same.
        Assert.All(plan.Draft.Edits.OfType<Edit.Add>().Where(a => a.Kind == ItemKind.Room),
            a => Assert.Contains(plan.Draft.Edits.OfType<Edit.Put>(), p => p.Value == a.Item));
        foreach (var moved in plan.Revised.Where(r => r.Label == "Room" && _job.House.Rooms.All(h => h.Name != r.There)))
            Assert.Contains(moved.Edits, e => e is Edit.Add { Kind: ItemKind.Room });
        // Of what is here nothing is changed; a window that is new may come.
        Assert.DoesNotContain(plan.Draft.Edits.OfType<Edit.Put>(), p => _job.House.Find(p.Item) is not null);
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

    private const string Chosen = "tag,room,width,mount,lead side,power,facing,kind\nW01,Hall,36,inside,left,panel,S,Roller\n";

    private static string Revised(string label, string to) => label switch
    {
        "Room" => Chosen.Replace(",Hall,", $",{to},", StringComparison.Ordinal),
        "Lead side" => Chosen.Replace(",left,", $",{to},", StringComparison.Ordinal),
        "Mount" => Chosen.Replace(",inside,", $",{to},", StringComparison.Ordinal),
        "Power" => Chosen.Replace(",panel,", $",{to},", StringComparison.Ordinal),
        "Rough width" => Chosen.Replace(",36,", $",{to},", StringComparison.Ordinal),
        _ => Chosen.Replace(",S,", $",{to},", StringComparison.Ordinal),
    };

    /// <summary>
    /// An end that comes out on the left, inside the opening, was made so by whoever pulled it: an office that says otherwise later moves no cable. Which side
    /// the window looks out to, and how wide its opening is, no cable says; in which room it comes out, it does.
    /// </summary>
    [Theory]
    [InlineData("Lead side", "right", true)]
    [InlineData("Mount", "outside", true)]
    [InlineData("Power", "battery", true)]
    [InlineData("Rough width", "40", false)]
    [InlineData("Facing", "N", false)]
    [InlineData("Room", "Den", true)]
    public void WhatACableInTheWallWasPulledForIsNotMadeAnotherByASchedule(string label, string to, bool stays)
    {
        foreach (var pulled in new Action<TestJob>[] { j => j.Pulled("W01"), j => j.Say("W01", RunFacts.TailAtWindow, "36"),
            j => j.Say("W01", RunFacts.SecondLoop, "1.2"), j => j.Say("W01", UnitFacts.EntryAsBuilt, "2") })
        {
            var job = new TestJob();
            SchedulePlan Of(string csv) =>
                ScheduleImport.Plan(job.Scribe.Log, Encoding.UTF8.GetBytes(csv), "r.csv", ScheduleOptions.ByHeaders with { Revised = true }).Value;
            job.Do(Of(Chosen).Draft);
            // Before it is pulled the office may say what it likes.
            Assert.Null(Assert.Single(Of(Revised(label, to)).Revised).KeptBecause);
            pulled(job);
            var plan = Of(Revised(label, to));
            Assert.Equal((label, stays ? "the cable of W01 lies in the wall: look at it with the office, and type it where it is to be another" : null),
                (Assert.Single(plan.Revised).Label, plan.Revised[0].KeptBecause));
            if (!stays)
                continue;
            Assert.False(plan.Changes);
            // Whoever looked says so, and then it is what they typed.
            if (label == "Room")
                job.Room(to);
            Fact fact = label switch { "Room" => WindowFacts.Room, "Lead side" => UnitFacts.LeadSide, "Mount" => WindowFacts.Mount, _ => UnitFacts.Power };
            job.Say("W01", fact, to);
            Assert.Empty(Of(Revised(label, to)).Revised);
        }
    }

    /// <summary>A blank that somebody made is a thing that somebody said too; one that undo made is not.</summary>
    [Fact]
    public void WhatSomebodyEmptiedStaysEmptyAndWhatWasUndoneComesAgain()
    {
        var wider = First.Replace("W01,Kitchen,36", "W01,Kitchen,40", StringComparison.Ordinal);
        _job.Do(Plan(wider).Draft);
        Assert.True(_job.Scribe.Undo().Ok);
        Assert.Null(Assert.Single(Plan(wider).Revised).KeptBecause);
        _job.Say("W01", WindowFacts.RoughWidth, "");
        var plan = Plan(wider);
        Assert.Contains("emptied it on", Assert.Single(plan.Revised).KeptBecause, StringComparison.Ordinal);
        Assert.False(plan.Changes);
    }

    /// <summary>A word for all windows that are gone calls off no order and pulls no cable out: those are noted, and what there is of them is said.</summary>
    [Fact]
    public void OfWindowsThatAreGoneThoseWithAnOrderOrACableAreNotedWhereTheOthersAreLeftOut()
    {
        _job.Say("W01", UnitFacts.OrderedOn, "2026-03-01").Pulled("W02");
        var plan = Plan("tag,width\nW09,30\n").Choosing(_job.House, [], GoneAs.LeftOut, Today).Value;
        Assert.Equal([("W01", "W01 is on order"), ("W02", "the cable of W02 lies in the wall")],
            plan.Standing.Select(s => (s.Key, s.Value)).OrderBy(s => s.Key, StringComparer.Ordinal));
        _job.Do(plan.Draft);
        Assert.Equal([("W01", false), ("W02", false), ("W03", true)], new[] { "W01", "W02", "W03" }.Select(t => (t, _job.House.FindTag(t)!.LeftOut)));
        Assert.All(new[] { "W01", "W02" }, t =>
            Assert.Equal("Gone from the schedule of 2026-03-05", _job.House.FindTag(t)!.Show(WindowFacts.Note)));
    }

    /// <summary>On site a window was renamed; the office still has its tag of before. It is one window, and keeps what was typed.</summary>
    [Fact]
    public void AWindowThatWasRenamedHereIsTheOneOfItsTagBefore()
    {
        _job.Say("W02", WindowFacts.Tag, "W02A");
        var plan = Plan(First.Replace("W02,Kitchen,30", "W02,Kitchen,31", StringComparison.Ordinal));
        Assert.Empty(plan.Windows);
        Assert.Empty(plan.Missing);
        Assert.Equal([("W02A", "Tag", "W02A", "W02", false), ("W02A", "Rough width", "30\"", "31\"", true)],
            plan.Revised.Select(r => (r.Tag, r.Label, r.Here, r.There, r.KeptBecause is null)));
        _job.Do(plan.Draft);
        Assert.Equal(Length.FromInches(31), Width("W02A"));
        // The office takes the new tag over: then nothing is to be said.
        var taken = Plan(First.Replace("W02,Kitchen,30", "W02A,Kitchen,31", StringComparison.Ordinal));
        Assert.False(taken.Changes);
        Assert.Empty(taken.Revised);
    }

    /// <summary>Of a schedule that has both tags nobody knows which row is that of the window: all that it has stays, and blanks stay blank.</summary>
    [Fact]
    public void WindowsWhoseTagsWereSwappedHereKeepWhatTheyHave()
    {
        _job.Say("W01", WindowFacts.Tag, "X").Say("W03", WindowFacts.Tag, "W01").Say("X", WindowFacts.Tag, "W03");
        var plan = Plan(First);
        Assert.False(plan.Changes);
        Assert.Contains(plan.Revised, r => r is { Tag: "W01", Label: "Rough width", Here: "30\"", There: "36\"" }
            && r.KeptBecause!.StartsWith("it was W03 until", StringComparison.Ordinal) && r.KeptBecause.EndsWith("has both", StringComparison.Ordinal));
        Assert.Contains(plan.Revised, r => r is { Tag: "W01", Label: "Facing", Here: "", KeptBecause: not null });
        Assert.Contains(plan.Revised, r => r is { Tag: "W03", Label: "Rough width", Here: "36\"", There: "30\"", KeptBecause: not null });
    }

    [Fact]
    public void AWindowThatTheOfficeRenamedIsSaidToBeAlike() => Assert.Contains(
        "W20 new and W02 gone, of one size in one room: look whether that is another tag of the same window",
        Plan(First.Replace("W02,", "W20,", StringComparison.Ordinal)).Understood);

    [Fact]
    public void OfTwoRowsOfOneTagTheSecondIsLeftOutAndSaid()
    {
        var plan = Plan(First + "W03,Den,33,40,\n");
        Assert.False(plan.Changes);
        Assert.Equal((5, true), (Assert.Single(plan.Problems).Line, plan.Problems[0].RowLost));
    }

    [Fact]
    public void AWindowThatWasLeftOutAsGoneAndIsBackIsSaidAndStaysLeftOut()
    {
        _job.Do(Plan(First.Replace("W02,Kitchen,30,48,S\n", "", StringComparison.Ordinal)).Choosing(_job.House, [], GoneAs.LeftOut, Today).Value.Draft);
        var plan = Plan(First);
        Assert.Contains("W02 is in the schedule, and is left out here as gone from one", plan.Understood);
        Assert.False(plan.Changes);
        Assert.True(_job.House.FindTag("W02")!.LeftOut);
    }

    /// <summary>Who leaves a window out leaves out its cable too: no schedule does that by itself, and none takes it back.</summary>
    [Fact]
    public void WhatTheScheduleLeavesOutOtherwiseIsListedAndLeftToSomebody()
    {
        var plan = Plan("tag,left out\nW01,yes\nW02,no\nW03,\n");
        Assert.False(plan.Changes);
        Assert.Equal(("W01", "Left out", "no", "yes"), (Assert.Single(plan.Revised).Tag, plan.Revised[0].Label, plan.Revised[0].Here, plan.Revised[0].There));
    }

    [Fact]
    public void ARoomThatWasRenamedHereKeepsItsWindowsAndItsName()
    {
        _job.Do(new Draft("Rename").PutStored(_job.House.FindTag("W03")!.Room!.Id, RoomFacts.Name.Name, "Snug"));
        var plan = Plan(First);
        Assert.False(plan.Changes);
        Assert.Equal(("W03", "Room", "Snug", "Den"), plan.Revised.Select(r => (r.Tag, r.Label, r.Here, r.There)).Single());
        Assert.Contains("renamed that room on", plan.Revised[0].KeptBecause, StringComparison.Ordinal);
    }

    [Fact]
    public void ARoomOfTheSameNameOnAnotherFloorIsAnotherRoom()
    {
        var job = new TestJob();
        SchedulePlan Of(string csv) => ScheduleImport.Plan(job.Scribe.Log, Encoding.UTF8.GetBytes(csv), "r.csv",
            ScheduleOptions.ByHeaders with { Revised = true }).Value;
        job.Do(Of("tag,room,floor,width\nW01,Bath,Main,30\n").Draft);
        Assert.Equal(("Bath/Main", "Bath/Upper"), Of("tag,room,floor,width\nW01,Bath,Upper,30\n").Revised.Select(r => (r.Here, r.There)).Single());
        Assert.Empty(Of("tag,room,floor,width\nW01,bath,main,30\n").Revised);
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

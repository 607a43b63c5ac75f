using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>A waiver holds for the one thing that was said, by whatever release it was given.</summary>
public class WaiversOfOneMessageTests
{
    /// <summary>What a release kept of a waiver: figures with tags, figures alone, or only the words of its day.</summary>
    public enum Kept
    {
        Now,
        FiguresWithoutTags,
        Words,
    }

    public static TheoryData<Kept> All => [.. Enum.GetValues<Kept>()];

    public static TheoryData<Kept> Earlier => [Kept.FiguresWithoutTags, Kept.Words];

    [Theory]
    [MemberData(nameof(All))]
    public void AMeasureThatIsMissingIsNotWaivedForAnOrderThatIsWrittenLater(Kept kept)
    {
        var job = Waived(Jobs.Measured().Forget("W01", WindowFacts.WidthBottom), "measures-incomplete", kept, "width-bottom");
        Assert.False(Finding(job, "measures-incomplete").Open);
        Assert.True(Finding(job.Say("W01", UnitFacts.OrderWidth, "36"), "measures-incomplete").Open);
        Assert.False(Finding(job.Say("W01", UnitFacts.OrderWidth, ""), "measures-incomplete").Open);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void SidesThatAreNotParallelDoNotWaiveAHeadAndASillThatAreNot(Kept kept)
    {
        var job = Waived(Jobs.Measured().Say("W01", WindowFacts.WidthTop, "40").Say("W01", WindowFacts.WidthBottom, "41")
            .Say("W01", WindowFacts.HeightLeft, "36").Say("W01", WindowFacts.HeightRight, "36"), "out-of-square", kept, "1016 mm; 1041.4 mm");
        Assert.False(Finding(job, "out-of-square").Open);
        job.Say("W01", WindowFacts.WidthTop, "36").Say("W01", WindowFacts.WidthBottom, "36")
            .Say("W01", WindowFacts.HeightLeft, "40").Say("W01", WindowFacts.HeightRight, "41");
        Assert.True(Finding(job, "out-of-square").Open);
    }

    // Two laptops gave one tag to windows of one room; the clash is waived, and a third window with the tag is another clash.
    [Fact]
    public void AnotherClashOfTagsIsAnotherFinding()
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03").Window("W04");
        var windows = job.House.Windows.Select(w => w.Id).ToList();
        Tag(job, windows[1], "W01");
        job.Do(PunchList.Waive(OfItem(job, "tag-twice", windows[0]), job.House, "both stay for now", "TC"));
        Assert.False(OfItem(job, "tag-twice", windows[0]).Open);
        Tag(Tag(job, windows[1], "W02"), windows[2], "W01");
        Assert.True(OfItem(job, "tag-twice", windows[0]).Open);
        Tag(Tag(job, windows[2], "W03"), windows[1], "w01");
        Assert.False(OfItem(job, "tag-twice", windows[0]).Open);
        Tag(Tag(job, windows[0], "W09"), windows[1], "W09");
        Assert.True(OfItem(job, "tag-twice", windows[0]).Open);
    }

    [Theory]
    [InlineData("output-shared")]
    [InlineData("label-twice")]
    [InlineData("hub-name-twice")]
    [InlineData("cable-shared")]
    public void AnotherOrderOfTheWalkOpensNothing(string check)
    {
        var job = new TestJob().WithPanel();
        foreach (var (tag, room) in new[] { ("W01", "Kitchen"), ("W02", "Den"), ("W03", "Hall") })
        {
            job.Window(tag, room).Say(tag, RunFacts.Panel, "P1").Say(tag, RunFacts.Output, "1").Say(tag, RunFacts.LabelAtWindow, "X")
                .Say(tag, UnitFacts.HubName, "Left");
            if (check == "cable-shared" && tag != "W01")
                job.Say(tag, RunFacts.BranchesOff, "W01");
        }
        var found = job.Report.Findings.Where(f => f.Check.Id == check).ToList();
        Assert.NotEmpty(found);
        foreach (var finding in found)
            job.Do(PunchList.Waive(finding, job.House, "the maker says so", "TC"));
        Assert.All(job.Report.Findings.Where(f => f.Check.Id == check), f => Assert.False(f.Open));
        var said = found.Select(f => f.Found.Message.In(job.House)).ToList();
        job.SayOf("Hall", RoomFacts.WalkingOrder, "1").SayOf("Den", RoomFacts.WalkingOrder, "2").SayOf("Kitchen", RoomFacts.WalkingOrder, "3");
        var after = job.Report.Findings.Where(f => f.Check.Id == check).ToList();
        Assert.NotEqual(said.Order(), after.Select(f => f.Found.Message.In(job.House)).Order());
        Assert.All(after, f => Assert.False(f.Open));
    }

    [Fact]
    public void AFifthValueThatIsUncheckedInsteadOfAnotherIsAnotherFinding()
    {
        var job = Jobs.Walked();
        var part = job.Report.Findings.First(f => f.Check.Id == "kit-unchecked" && f.Found.Message.Args.Count == 3).Subject;
        Finding Found() => OfItem(job, "kit-unchecked", part.Id);
        var values = FactTable.Of(part.Kind).Where(f => f.Name != "name" && part.Latest(f.Name)?.Stored is not null).ToList();
        Assert.True(values.Count > 5);
        job.Do(new Draft("checked").PutStored(part.Id, Companion.Checked(values[4].Name), "yes"));
        job.Do(PunchList.Waive(Found(), job.House, "the sheet comes with the boxes", "TC"));
        Assert.False(Found().Open);
        job.Do(new Draft("the other").PutStored(part.Id, Companion.Checked(values[4].Name), null).PutStored(part.Id, Companion.Checked(values[5].Name), "yes"));
        Assert.True(Found().Open);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void OtherUnitsOpenNoWaiverOfMainsThatAreNear(Kept kept)
    {
        var job = Waived(Jobs.Roughed().Say("W01", RunFacts.MainsDistance, "1").Say("W01", RunFacts.MainsSheathed, "no"), "mains-too-near", kept, "25.4 mm");
        Assert.False(Finding(job, "mains-too-near").Open);
        job.SayOf("", HouseFacts.Units, "millimetres");
        Assert.Equal("The cable comes within 25 mm of mains wiring that is not sheathed; 50 mm (2 in) are asked for.",
            Finding(job, "mains-too-near").Found.Message.In(job.House));
        Assert.False(Finding(job, "mains-too-near").Open);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void ANewNameOpensNothingAndAnotherItemDoes(Kept kept)
    {
        var job = new TestJob().Window("W01", "Bath").Room("Bedroom").Room("Hall");
        foreach (var (remote, room) in new[] { ("Bedroom remote", "Bedroom"), ("Hall remote", "Hall") })
            job.Add(ItemKind.Remote, remote).SayOf(remote, RemoteFacts.Room, room);
        Toggle(job, "Bedroom remote");
        const string Check = "unit-off-room-remote";
        Waived(job, Check, kept, null);
        Assert.False(Finding(job, Check).Open);
        Assert.False(Finding(job.SayOf("Bedroom remote", RemoteFacts.Name, "Master"), Check).Open);
        Assert.False(Finding(job.SayOf("Master", RemoteFacts.Name, "Bedroom remote"), Check).Open);
        Toggle(Toggle(job, "Bedroom remote"), "Hall remote");
        Assert.Equal("Hall remote moves it, and none of them is kept in Bath.", Finding(job, Check).Found.Message.In(job.House));
        Assert.True(Finding(job, Check).Open);
    }

    // The words of these waivers lie in files; the second is said in other words now.
    [Theory]
    [InlineData("The opening is 3\" deep; Roller needs 5\".", true)]
    [InlineData("The opening has 3\" of depth and Roller takes 5\".", true)]
    [InlineData("The opening is 76.2 mm deep; Roller needs 127 mm.", true)]
    [InlineData("The opening is 3\" deep; Cellular needs 5\".", false)]
    [InlineData("The opening has 3\" of depth and Cellular takes 5\".", false)]
    [InlineData("The opening is 3\" deep; Roller needs 4\".", false)]
    [InlineData("The opening is 3\" deep; Solar shade needs 5\".", true)]
    public void TheWordsOfAnEarlierDayHoldForTheItemsThatTheyName(string said, bool holds)
    {
        var job = Jobs.Measured().Say("W01", WindowFacts.Depth, "3").SayOf("Roller", CoveringKindFacts.DepthNeeded, "5");
        var finding = Finding(job, "depth-too-shallow");
        job.Do(new Draft("as it lies in a file").New(ItemKind.Waiver, finding.Subject.Id, out var id)
            .Put(id, WaiverFacts.Check, "depth-too-shallow").Put(id, WaiverFacts.Figures, said));
        Assert.Equal(holds, !Finding(job, "depth-too-shallow").Open);
    }

    private static Finding Finding(TestJob job, string check) => job.Report.Findings.Single(f => f.Check.Id == check);

    private static Finding OfItem(TestJob job, string check, string item) => job.Report.Findings.Single(f => f.Check.Id == check && f.Subject.Id == item);

    private static TestJob Tag(TestJob job, string window, string tag) => job.Do(new Draft("tag").PutStored(window, WindowFacts.Tag.Name, tag));

    private static TestJob Toggle(TestJob job, string remote) =>
        job.Do(Core.Decisions.Controls.Toggle(job.House.Remotes.Single(r => r.Name == remote), job.Unit("W01")));

    /// <summary>Waives the finding, and keeps of the waiver what a release kept.</summary>
    private static TestJob Waived(TestJob job, string check, Kept kept, string? figures)
    {
        job.Do(PunchList.Waive(Finding(job, check), job.House, "agreed", "TC"));
        var waiver = job.House.Waivers[^1];
        return kept switch
        {
            Kept.Words => job.Do(new Draft("words").PutStored(waiver.Id, WaiverFacts.Arguments.Name, null)),
            Kept.FiguresWithoutTags when figures is not null => job.Do(new Draft("figures").PutStored(waiver.Id, WaiverFacts.Arguments.Name, figures)),
            _ => job,
        };
    }
}

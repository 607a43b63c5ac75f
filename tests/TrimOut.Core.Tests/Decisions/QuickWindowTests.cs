using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class QuickWindowTests
{
    [Theory]
    [InlineData("W09 roller left 36x60 SW ladder inside panel @Breakfast nook")]
    [InlineData("@Breakfast nook")]
    [InlineData("roller W09 @breakfast NOOK")]
    [InlineData("W10 W09 roller @Breakfast nook")]
    public void WhatIsNotSaidCarriesOverFromTheWindowBefore(string line)
    {
        var job = new TestJob().Room("Breakfast nook");
        job.Do(Read("W08 roller left 36x60 SW ladder inside panel @Breakfast nook", job.House).Add(job.House).Value);
        var window = Read(line, job.House);
        Assert.Equal("W09, Breakfast nook, Roller, left, 36\" x 60\", SW, ladder, inside, panel", window.Echo(job.House));
        job.Do(window.Add(job.House));
        Assert.Equal(Side.Left, job.Unit("W09").LeadSide);
    }

    [Theory]
    [InlineData("W01 roller left 36x60 2 units")]
    [InlineData("2 Units W01 roller left 36x60")]
    [InlineData("W01 2-units roller left 36x60")]
    [InlineData("W01 roller 2units left 36x60")]
    public void SeveralUnitsOfOneOpeningAreSaidInItsLine(string line)
    {
        var job = new TestJob();
        var window = Read(line, job.House);
        Assert.StartsWith("W01, no room yet, 2 units, Roller, left", window.Echo(job.House), StringComparison.Ordinal);
        job.Do(window.Add(job.House));
        Assert.Equal(["W01A", "W01B"], job.House.Units.Select(u => u.Tag));
        Assert.All(job.House.Units, u => Assert.Equal(("Roller", Side.Left), (u.Kind!.Name, u.LeadSide!.Value)));
        Assert.All(job.House.Units, u => Assert.NotNull(u.Item));
        Assert.DoesNotContain("2 units", Read("W02", job.House).Echo(job.House), StringComparison.Ordinal);
        Assert.DoesNotContain("units", Read("W02 1 unit", job.House).Echo(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void NoUnitsAtAllIsAnotherThing() =>
        Assert.Contains("1 to 9 units", QuickWindow.Read("W01 0 units", new TestJob().House).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("wood", "Wood blind")]
    [InlineData("blind", "Wood blind")]
    [InlineData("wood blind", "Wood blind")]
    [InlineData("cell", "Small cellular")]
    [InlineData("small cell", "Small cellular")]
    public void AKindIsFoundByAnyWordOfItsName(string typed, string kind)
    {
        var job = new TestJob().Add(ItemKind.CoveringKind, "Small cellular");
        foreach (var other in job.House.ItemsOf(ItemKind.CoveringKind).Where(k => job.House.NameOf(k) is not ("Roller" or "Small cellular")).ToList())
            job.Do(RemoveItems.Remove(job.House, other));
        job.Add(ItemKind.CoveringKind, "Wood blind");
        Assert.Contains($", {kind},", Read($"W01 {typed} left", job.House).Echo(job.House), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("W01 35-3/8x60-1/4")]
    [InlineData("W01 35 3/8x60 1/4")]
    [InlineData("W01 35 3/8 x 60 1/4 left")]
    [InlineData("W01 35-3/8 x 60-1/4")]
    [InlineData("W01 35 3/8\" by 60 1/4\"")]
    [InlineData("W01 35 3/8 in x 60 1/4 in")]
    [InlineData("W01 35.375x60.25")]
    [InlineData("35 3/8x60 1/4 W01")]
    public void ASizeIsUnderstoodHoweverItIsSpaced(string line)
    {
        var house = new TestJob().House;
        Assert.StartsWith("W01, no room yet, ", Read(line, house).Echo(house), StringComparison.Ordinal);
        Assert.Contains("35 3/8\" x 60 1/4\"", Read(line, house).Echo(house), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("W01 900x1500")]
    [InlineData("W01 900 mm x 1500 mm")]
    [InlineData("W01 90 cm x 1.5 m")]
    public void MetricSizesToo(string line)
    {
        var house = new TestJob(Core.Units.DisplayUnits.Millimetres).House;
        Assert.Contains("900 mm x 1500 mm", Read(line, house).Echo(house), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsNotUnderstoodIsNamedWithTheKindsOfThisHouse()
    {
        var refused = QuickWindow.Read("W01 drapery left", new TestJob().House);
        Assert.False(refused.Ok);
        Assert.StartsWith("\"drapery\" is not understood. Kinds here: ", refused.Reason, StringComparison.Ordinal);
        Assert.Contains("Roller", refused.Reason, StringComparison.Ordinal);
        Assert.Contains("Wood blind", refused.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("W01 roller floor 1 left")]
    [InlineData("W01 Ground floor left")]
    [InlineData("W02 Upper left")]
    public void AFloorOfTheHouseAmongTheWordsIsToldWhereItStands(string line)
    {
        var refused = QuickWindow.Read(line, new TestJob().Room("Bath", "Upper").House);
        Assert.Contains("A floor of the house stands last, behind the room: @Kitchen/Upper.", refused.Reason!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("W01 @", "Say after @ which room it is in.")]
    [InlineData("W01 out:", "Say after out: why the window is left out.")]
    [InlineData("W01 400'x60", "too long")]
    public void HalfALineIsRefused(string line, string because) =>
        Assert.Contains(because, QuickWindow.Read(line, new TestJob().House).Reason, StringComparison.Ordinal);

    /// <summary>Nobody can know which of two is meant: the last word does not win, and the line is there to be mended.</summary>
    [Theory]
    [InlineData("W92 36x60 left right", "left and right both stand for \"Lead side\": type one of them.")]
    [InlineData("W92 36x60 40x60", "36x60 and 40x60 both stand for \"Rough width\": type one of them.")]
    [InlineData("W92 36x60 36x50", "36x60 and 36x50 both stand for \"Rough height\": type one of them.")]
    [InlineData("W92 SW left NE", "SW and NE both stand for \"Facing\": type one of them.")]
    [InlineData("W92 inside outside", "inside and outside both stand for \"Mount\": type one of them.")]
    [InlineData("W92 floor ladder", "floor and ladder both stand for \"Reached from\": type one of them.")]
    [InlineData("W92 panel battery", "panel and battery both stand for \"Power\": type one of them.")]
    [InlineData("W92 2 units 3 units", "2 units and 3 units both stand for \"Number of units\": type one of them.")]
    [InlineData("W92 roller cellular", "roller and cellular both stand for \"Kind\": type one of them.")]
    [InlineData("W92 left out: stained glass", null)]
    [InlineData("W92 left left 36x60 36x60 SW SW roller roller 2 units 2 units", null)]
    public void WhatIsSaidTwiceAndUnlikeIsRefused(string line, string? because)
    {
        var job = new TestJob();
        job.Do(Read("W01 cellular right 40x50 N scaffold inside panel @Hall", job.House).Add(job.House));
        Assert.Equal(because, QuickWindow.Read(line, job.House).Reason);
    }

    [Fact]
    public void MoreWordsOfTheKindSayWhichOne()
    {
        var job = new TestJob().Add(ItemKind.CoveringKind, "Small cellular");
        foreach (var line in new[] { "W01 cellular small", "W01 small cellular" })
            Assert.Contains(", Small cellular", Read(line, job.House).Echo(job.House), StringComparison.Ordinal);
    }

    [Fact]
    public void ATagThatIsTakenSaysByWhich()
    {
        var job = new TestJob().Window("W01", "Study");
        Assert.Contains("Study", QuickWindow.Read("W01 roller", job.House).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void AWindowIsLeftOutOnPurposeWithItsReason()
    {
        var job = new TestJob();
        job.Do(Read("W01 36x60 @Hall out: stained glass", job.House).Add(job.House));
        Assert.True(job.House.FindTag("W01")!.LeftOut);
        Assert.Equal("stained glass", job.House.FindTag("W01")!.Show(WindowFacts.NotCoveredBecause));
    }

    /// <summary>A window that gets no covering takes the room of the one before and nothing else; another room may be said behind the reason.</summary>
    [Theory]
    [InlineData("W02 out: stained glass", "Hall")]
    [InlineData("W02 out: stained glass @Study", "Study")]
    [InlineData("W02 @Study out: stained glass", "Study")]
    public void ALeftOutWindowCarriesOverItsRoomAlone(string line, string room)
    {
        var job = new TestJob();
        job.Do(Read("W01 roller left 36x60 SW ladder outside panel 2 units @Hall", job.House).Add(job.House));
        job.Do(Read(line, job.House).Add(job.House));
        var window = job.House.FindTag("W02")!;
        Assert.Equal(("stained glass", room), (window.Show(WindowFacts.NotCoveredBecause), window.Room!.Name));
        Assert.Equal((null, null, null, 1), (window.RoughWidth, window.Mount, window.Reach, window.Units.Length));
        Assert.Equal("W03, Hall", Read("W03", job.House).Echo(job.House)[..9]);
    }

    [Fact]
    public void ARoomOfWhichTwoFloorsHaveOneIsAskedForWithItsFloor()
    {
        var job = new TestJob();
        foreach (var line in new[] { "W01 36x60 @Kitchen/Main", "W02 @Kitchen/Upper" })
            job.Do(Read(line, job.House).Add(job.House));
        Assert.Equal("There is more than one Kitchen. Type which: Kitchen/Main, Kitchen/Upper.", QuickWindow.Read("W03 @kitchen", job.House).Reason);
        job.Do(Read("W03 @kitchen/main", job.House).Add(job.House));
        Assert.Equal(["W01", "W03"], job.House.Rooms[0].Windows.Select(w => w.Tag));
        Assert.Equal("W04, Kitchen/Main, 36\" x 60\"", Read("", job.House).Echo(job.House));
        Assert.Equal("Kitchen/Upper", job.House.FindTag("W02")!.Show(WindowFacts.Room));
    }

    [Fact]
    public void ANewRoomIsOnTheFloorThatIsTypedOrOnThatOfTheRoomBeforeAndTheEchoSaysSo()
    {
        var job = new TestJob();
        Assert.Equal("W01, Kitchen/Upper (new room, new floor)", Read("@Kitchen/Upper", job.House).Echo(job.House));
        job.Do(Read("@Kitchen/Upper", job.House).Add(job.House));
        Assert.Equal("W02, Hall/Upper (new room)", Read("@Hall", job.House).Echo(job.House));
        Assert.Equal("Say after / on which floor Hall is.", QuickWindow.Read("@Hall/", job.House).Reason);
    }

    [Fact]
    public void ASecondRoomOfANameWaitsForTheFloorOfTheFirst()
    {
        var job = new TestJob().Room("Kitchen");
        Assert.StartsWith("There is a room Kitchen already. Two rooms of one name need a floor each", QuickWindow.Read("@Kitchen/Upper", job.House).Reason,
            StringComparison.Ordinal);
    }

    /// <summary>What stands behind the room would become its name, and a second window would be lost in it.</summary>
    [Theory]
    [InlineData("W02 @Living room/Main cellular inside 30x50 left N floor @Bedroom/Upper", "A new room has no @ in its name or floor.")]
    [InlineData("W02 @Den roller 30x50", "\"roller\" is taken for a part of Den roller 30x50")]
    [InlineData("W02 @Den 30 x 50", "\"30x50\" is taken for a part of")]
    [InlineData("W02 @Den/Upper left", "\"left\" is taken for a part of")]
    [InlineData("W02 @Den inside", "\"inside\" is taken for a part of")]
    [InlineData("W02 @Den 2 units", "\"2units\" is taken for a part of")]
    public void AWordOfTheWindowInsideANewRoomsNameIsRefused(string line, string because) =>
        Assert.StartsWith(because, QuickWindow.Read(line, new TestJob().Window("W01").House).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("W02 @Left bedroom", "Left bedroom")]
    [InlineData("W02 @Bedroom 2/Upper", "Bedroom 2")]
    [InlineData("W02 @Room in back", "Room in back")]
    [InlineData("W02 left @Den inside", "Den inside")]
    public void ARoomMayBeginWithAnyWordAndOneThatIsThereKeepsItsName(string line, string room)
    {
        var job = new TestJob().Room("Den inside").Window("W01");
        Assert.Equal(room, Read(line, job.House).Room!.Value.Name);
    }

    [Fact]
    public void ARoomIsAddedWithoutAnAtInItsName()
    {
        var house = new TestJob().House;
        Assert.StartsWith("A new room has no @", SetLine.Read(house, "room\tnew\tDen @Bedroom").Reason, StringComparison.Ordinal);
        Assert.True(SetLine.Read(house, "room\tnew\tHall inside").Ok);
    }

    private static QuickWindow Read(string line, House house) =>
        QuickWindow.Read(line, house) is var read && read.Ok ? read.Value : throw new Xunit.Sdk.XunitException($"{line}: {read.Reason}");
}

using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Rooms;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Rooms, floors and windows left out, all by keyboard, on a small terminal and on a large one.</summary>
public class RoomsTests
{
    public static TheoryData<int, int> Sizes => new() { { 80, 24 }, { 140, 40 } };

    private static TestJob Job() => new TestJob().Room("Kitchen", "Main").Room("Kichen", "Main").Room("Study", "Upper")
        .Window("W01").Window("W02", "Kichen").Window("W03", "Study").Window("W04", "Study");

    private static TerminalUser At(TestJob job, int width, int height) => new(new TestDesk(new FakeTimeProvider()), job.Scribe, width, height);

    [Theory]
    [MemberData(nameof(Sizes))]
    public void AMistypedRoomIsMergedAndUndoBringsItBack(int width, int height)
    {
        using var user = At(Job().Add(ItemKind.Remote, "R1").SayOf("R1", RemoteFacts.Room, "Kichen"), width, height);
        user.Press("g").Type("W02").Press("r").Sees("Rooms").Sees("Kichen").Press("up").Sees("Windows: W02").Sees("Remotes: R1");
        user.Press("M").Type("Kitchen").Sees("Kichen merged into Kitchen: W02, R1.").Press("M");
        Assert.Equal(["Kitchen", "Study"], user.House.Rooms.Select(r => r.Name));
        Assert.Equal("Kitchen", user.House.FindTag("W02")!.Room!.Name);
        Assert.Equal("Kitchen", user.House.Remotes[0].Room!.Name);
        user.Sees("Windows: W01, W02");
        user.Press("u", "u");
        Assert.Equal("Kichen", user.House.FindTag("W02")!.Room!.Name);
        Assert.Equal("Kichen", user.House.Remotes[0].Room!.Name);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void RoomsAndFloorsAreNamedAndMovedAndTheJobSheetFollows(int width, int height)
    {
        using var user = At(Job(), width, height);
        user.Press("r", "home").Sees("Rooms: Kitchen, Kichen").Press("enter").Type("Ground").Press(">").Sees("Ground after Upper on the walk");
        Assert.Equal(["W03", "W04", "W01", "W02"], user.House.Units.Select(u => u.Tag));
        user.Press("home", "down", "enter").Write("Den").Press("tab").Type("Loft");
        Assert.Equal(("Den", "Loft"), (user.House.Rooms[0].Name, user.House.Rooms[0].Floor));
        user.Press("down", ">").Sees("W03 after W04 on the walk").Press("esc");
        Assert.Equal(["W04", "W03", "W01", "W02"], JobSheetRows.Units((JobSheetScreen)user.Shell.Screen, user.Shell.Context).Select(u => u.Tag));
        user.Sees("Den (Loft)").Press("2", "1", "u", "u").Press("r", "n").Type("Bath/Loft");
        Assert.Equal(["Den", "Kitchen", "Kichen", "Bath"], user.House.Rooms.Select(r => r.Name));
        Assert.Equal("Bath", ((RoomsScreen)user.Shell.Screen).Current(user.Shell.Context)!.Room!.Name);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void AWindowIsMovedToAnotherRoomOrOpened(int width, int height)
    {
        using var user = At(Job(), width, height);
        user.Press("r").Sees("Kitchen").Press("M").Type("stu").Sees("W01 in Study");
        Assert.Equal(["W03", "W04", "W01"], user.House.Rooms[2].Windows.Select(w => w.Tag));
        user.Press("enter").Sees("W01, Study").Press("esc", "up", "up", "up", "X").Sees("W01 is in Study. M merges");
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void TheLineOfAWindowAsksWhichKitchen(int width, int height)
    {
        using var user = At(Job(), width, height);
        user.Press("n").Type("W05 @Kitchen/Upper").Write("W06 @Kitchen").Sees("Kitchen/Main, Kitchen/Upper").Press("esc");
        Assert.Equal("Upper", user.House.FindTag("W05")!.Room!.Floor);
        user.Sees("W05");
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void AWindowThatIsLeftOutStaysOnTheListOpensAndComesBackWithOneKey(int width, int height)
    {
        using var user = At(Job(), width, height);
        user.Press("down", "-").Type("stained glass").Sees("W02  left out: stained glass").Sees("b brings it back");
        Assert.Equal("W02", ((JobSheetScreen)user.Shell.Screen).LeftOut(user.Shell.Context)!.Tag);
        user.Press("space").Sees("W02 is left out. b brings it back").Press("S", "S").Sees("W02  left out").Press("*");
        user.Press("g").Type("W02").Press("enter").Sees("Left out because").Sees("stained glass").Press("esc");
        user.Press("b").Sees("Saved: W02 gets a covering after all");
        Assert.False(user.House.FindTag("W02")!.LeftOut);
        Assert.Equal("W02", ((JobSheetScreen)user.Shell.Screen).Current(user.Shell.Context)!.Tag);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void AWindowThatIsLeftOutOnItsSheetStaysThereToTakeItsReason(int width, int height)
    {
        using var user = At(Job(), width, height);
        user.Press("enter", "down", "down", "enter").Write("no").Sees("no").Press("tab").Sees("Left out because").Type("art wall");
        Assert.Equal("art wall", user.House.FindTag("W01")!.Show(WindowFacts.NotCoveredBecause));
        user.DoesNotSee("no longer in the house").Press("up", "enter").Type("yes").Sees("W01, Kitchen");
        Assert.False(user.House.FindTag("W01")!.LeftOut);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void AFilterThatHidesATagSaysSo(int width, int height)
    {
        using var user = At(Job(), width, height);
        user.Press("/").Type("study").Sees("\"study\": 2 of 4");
        user.Press("g").Type("W01").Sees("The filter hid W01: all is shown again.").DoesNotSee("\"study\"");
        user.Press("/").Type("study").Press("n").Type("W09 @Kitchen").Sees("W09 is saved; the filter hides it.").Press("esc", "*");
        user.Press("!", "/").Type("W03").Sees("W03 is hidden");
    }
}

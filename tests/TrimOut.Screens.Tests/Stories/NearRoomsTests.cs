using Microsoft.Extensions.Time.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A room or floor that is nearly one that is there is asked about before there are two.</summary>
public class NearRoomsTests
{
    [Fact]
    public void ARoomOneLetterOffIsAskedAboutAndEnterOnceMoreTakesIt()
    {
        using var user = Begun();
        user.Type("W02 @Kichen").Sees("there is a room Kitchen").Sees("Enter once more");
        Assert.Single(user.House.Rooms);
        user.Type("W02 @Kitchen").Press("esc");
        Assert.Single(user.House.Rooms);
        user.Press("n").Type("W03 @Kichen").Press("enter", "esc");
        Assert.Equal(["Kitchen", "Kichen"], user.House.Rooms.Select(r => r.Name));
    }

    [Fact]
    public void AFloorOneLetterOffIsAskedAbout()
    {
        using var user = Begun();
        user.Type("W02 @Bedroom/Mian").Sees("there is a floor Main");
        Assert.Single(user.House.Rooms);
        user.Type("W02 @Bedroom/Main").Press("esc");
        Assert.Equal(["Main"], user.House.Floors);
    }

    [Fact]
    public void AWordBehindTheRoomIsAskedAboutBeforeItBecomesItsName()
    {
        using var user = Begun();
        user.Type("W02 @Bedroom/Upper right").Sees("\"right\" is taken for a part of");
        user.Type("W02 right @Bedroom/Upper").Press("esc");
        Assert.Equal(["Main", "Upper"], user.House.Floors);
    }

    [Fact]
    public void ASecondWindowTypedOnToTheLineMakesNoRoomAndTheLineStays()
    {
        using var user = Begun();
        user.Type("W02 @Bedroom/Upper roller 30x50 @Study").Sees("A new room has no @").Press("enter").Sees("W02 @Bedroom/Upper roller 30x50 @Study");
        Assert.Single(user.House.Rooms);
    }

    [Fact]
    public void OnTheRoomsANewNameTooIsAskedAbout()
    {
        using var user = Begun();
        user.Press("esc", "r", "n").Type("Kitchn/Main").Sees("there is a room Kitchen").Press("esc");
        user.Press("n").Type("Pantry/Mani").Sees("there is a floor Main");
        Assert.Single(user.House.Rooms);
        user.Type("Pantry/Main").Press("enter").Type("Kitchne").Sees("there is a room Kitchen").Press("esc", "F").Type("Maim").Sees("there is a floor Main");
        Assert.Equal(["Kitchen", "Pantry"], user.House.Rooms.Select(r => r.Name));
        Assert.Equal(["Main"], user.House.Floors);
    }

    [Fact]
    public void WhatIsSavedSaysWhatItHasOfTheWindowBefore()
    {
        using var user = Begun();
        user.Type("W02 right").Sees("Saved: New window W02; as W01: room, kind, power, rough width");
        user.Press("esc");
        Assert.EndsWith("as W01: room, kind, power, rough width, rough height, facing, reached from, mount", user.Shell.Context.Log.Changes[^1].What,
            StringComparison.Ordinal);
    }

    private static TerminalUser Begun()
    {
        var user = new TerminalUser(new TestDesk(new FakeTimeProvider()));
        return user.Press("n").Type("Mill cottage").Press("enter", "n").Type("W01 roller left 36x60 SW floor inside panel @Kitchen/Main");
    }
}

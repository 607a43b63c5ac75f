using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Tests.Stories;

public class NewHouseTests
{
    [Fact]
    public void FromNothingToTheFirstWindow()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()));
        user.Sees("Corner house").Press("n").Type("Mill cottage").Press("enter");
        user.Sees("Press n and type one line");
        user.Press("n").Type("W01 roller left 36x60 SW floor inside panel @Kitchen");
        user.Press("esc").Sees("Kitchen").Sees("W01");
        var unit = Assert.Single(user.House.Units);
        Assert.Equal("36\"", unit.Window.Show(WindowFacts.RoughWidth));
        Assert.Equal(Side.Left, unit.LeadSide);
    }

    [Theory]
    [InlineData("mm")]
    [InlineData("millimetres")]
    public void UnitsAreTakenShortAndLong(string typed)
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()));
        user.Press("n").Type("Mill cottage").Type(typed);
        Assert.Equal(DisplayUnits.Millimetres, user.House.DisplayUnits);
    }

    /// <summary>The folder is read when it is asked about, so that what was put right there needs no new start.</summary>
    [Fact]
    public void WhereTwoFilesAreOnePartBothAreNamedAndOneIsChosen()
    {
        var desk = new TestDesk(new FakeTimeProvider());
        using var user = new TerminalUser(desk);
        PartSheet Hub(int devices) =>
            PartText.Read($"trimout-part: 1\nkind: hub-type\nname: Hub\nedition: rev {devices}\ndevices: {devices}\n").Value;
        desk.Kept.AddRange([Hub(7), Hub(9)]);
        user.Press("n").Type("Mill cottage").Press("enter").Sees("1 part from your folder").Type("my")
            .Sees("Hub-1.part.txt (edition rev 7)").Sees("Hub-2.part.txt").Sees("(edition rev 9)");
        user.Type("Hub-2.part.txt");
        Assert.Equal(9, user.House.ItemsOf(ItemKind.HubType).Single().Get(HubTypeFacts.Devices));
    }

    [Fact]
    public void AFileOfTheKitFolderThatCannotBeReadIsSaidWhereAHouseBegins()
    {
        var desk = new TestDesk(new FakeTimeProvider()) { Broken = { "broken.part.txt: It says no name." } };
        using (var user = new TerminalUser(desk))
        {
            user.Press("n").Type("Mill cottage").Press("enter").Sees("Not read, so not in it: broken.part.txt: It says no name.").Press("y");
            Assert.NotEmpty(user.House.ItemsOf(ItemKind.HubType));
        }
        desk.Kept.Add(PartText.Read("trimout-part: 1\nkind: hub-type\nname: Attic hub\ndevices: 7\n").Value);
        using var other = new TerminalUser(desk);
        other.Press("n").Type("Other cottage").Press("enter").Sees("Not read, so not in it: broken.part.txt: It says no name.")
            .Sees("the path of another").Type("my kit");
        Assert.Equal("Attic hub", other.House.NameOf(other.House.ItemsOf(ItemKind.HubType).Single()));
    }

    /// <summary>All that are not in it are named, and a key that answers nothing takes away nothing that was typed.</summary>
    [Fact]
    public void FilesThatCannotBeReadAreAllNamedAndWhatWasTypedStays()
    {
        string[] files = ["a.part.txt", "b.part.txt", "c.part.txt", "d.part.txt"];
        var desk = new TestDesk(new FakeTimeProvider());
        desk.Broken.AddRange(files.Select(f => $"{f}: It says no name."));
        using var user = new TerminalUser(desk, width: 120, height: 30);
        user.Press("n").Type("Mill cottage").Press("enter").Sees("a.part.txt").Sees("b.part.txt, c.part.txt, d.part.txt").Press("f5").Sees("Units");
        user.Press("enter").Press("y");
        Assert.Equal("Mill cottage", user.House.Name);
    }

    /// <summary>A stick from the office, where there is a kit in the user's own folder too.</summary>
    [Fact]
    public void AHouseBeginsWithThePartsOfAnotherFolder()
    {
        var desk = new TestDesk(new FakeTimeProvider());
        desk.Kept.Add(PartText.Read("trimout-part: 1\nkind: hub-type\nname: Attic hub\ndevices: 7\n").Value);
        desk.Folders["/stick/kit"] = [new("hub.part.txt", PartText.Read("trimout-part: 1\nkind: hub-type\nname: Cellar hub\ndevices: 9\n")),
            new("bad.part.txt", new Core.Refusal("bad.part.txt: It says no name."))];
        using var user = new TerminalUser(desk);
        user.Press("n").Type("Mill cottage").Press("enter").Sees("or the path of another folder").Type("/stick/none").Sees("There is no folder /stick/none.");
        user.Type("/stick/kit").Sees("Not read, so not in it: bad.part.txt: It says no name.").Press("y");
        Assert.Equal("Cellar hub", user.House.NameOf(user.House.ItemsOf(ItemKind.HubType).Single()));
    }

    [Fact]
    public void ATagThatIsTakenIsRefusedAndTheTextStays()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()));
        user.Press("n").Type("Mill cottage").Press("enter", "n").Type("W01 roller @Kitchen");
        user.Type("w01").Sees("Tag W01 is taken").Sees("w01");
        Assert.Single(user.House.Windows);
    }
}

using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Screens.Kit;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Somebody goes through a sheet with values that are there already, and keeps and takes parts.</summary>
public class SheetInHandTests
{
    private readonly TestJob _job = new TestJob().Window("W01");
    private readonly TestDesk _desk = new(new FakeTimeProvider());

    private TerminalUser AtRoller(Fact fact)
    {
        var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9", "s");
        while (((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context) != fact)
            user.Press("down");
        return user;
    }

    [Fact]
    public void EnterOnAValueThatIsThereSaysThatItWasMarkedAsChecked()
    {
        using var user = AtRoller(CoveringKindFacts.RunningCurrent);
        user.Press("enter").Sees("as it stands Enter says that you checked it").Press("enter").Sees("Running current 0.8 A is said to be checked");
        Assert.Contains(CoveringKindFacts.LeastVolts, SheetValues.NotHeldIn(user.House.ItemsOf(ItemKind.CoveringKind).First()));
    }

    [Fact]
    public void DownPassesAValueAndMarksNothing()
    {
        using var user = AtRoller(CoveringKindFacts.RunningCurrent);
        user.Press("down", "down");
        Assert.Same(_job.House, user.House);
    }

    /// <summary>Another value of the same sheet is far from usual, and a stop stands: what was typed last is told first all the same.</summary>
    [Fact]
    public void AnUnusualValueIsToldWhateverStandsAlready()
    {
        _job.SayOf("Roller", CoveringKindFacts.StartingCurrent, "0.4").SayOf("Roller", CoveringKindFacts.PairHold, "70");
        using var user = AtRoller(CoveringKindFacts.PresetHold);
        user.Press("enter").Type("75").Sees("hold to store preset");
        Assert.Equal("sheet-value-unusual", user.Shell.Caused.Shown!.Check.Id);
    }

    [Fact]
    public void APartThatNobodyCheckedTakesNoCheckedOnesPlaceUnasked()
    {
        PartSheet Roller(string mark) => PartText.Read("trimout-part: 1\nkind: covering-kind\nname: Roller\nheld-by: Ash\nheld-on: 2026-03-02\n"
            + $"{mark}motor-volts: 12 V\n").Value;
        _desk.Kept.Add(Roller(""));
        using var user = new TerminalUser(_desk, _job.Scribe);
        user.Press("9", "k").Sees("that were checked against").Press("esc");
        Assert.Equal(Roller(""), _desk.Kept.Single(), (a, b) => a!.Values.SequenceEqual(b!.Values));
        user.Press("k", "y");
        Assert.DoesNotContain(_desk.Kept.Single().Values, v => v.Held);
    }

    [Fact]
    public void TheFolderSaysHowManyValuesOfAPartWereChecked()
    {
        _desk.Kept.Add(PartText.Read("trimout-part: 1\nkind: hub-type\nname: Attic hub\nheld-by: Ash\nheld-on: 2026-03-02\n? devices: 7\n").Value);
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110);
        user.Press("9", "O").Sees("0 of 1 value checked by Ash").Sees("? Devices 7").Sees("1 not checked (?)");
    }

    private TerminalUser AtPanel()
    {
        var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9");
        while (((KitScreen)user.Shell.Screen).Current(user.Shell.Context)!.Kind != ItemKind.PanelType)
            user.Press("down");
        return user.Press("n").Type("Attic panel").Press("s");
    }

    [Fact]
    public void DownAfterEnterPassesNoRowByUnsaid()
    {
        using var user = AtPanel();
        user.Press("enter").Type("12");
        var at = user.Shell.Typing!.Entry.InPlace;
        user.Press("down").Sees("Enter went on by itself: this is Attic panel: Supply.").Press("enter");
        Assert.Equal(at, user.Shell.Typing!.Entry.InPlace);
        user.Type("24");
        Assert.Equal("24 V", user.House.ItemsOf(ItemKind.PanelType).Last().Latest(PanelTypeFacts.Supply)!.Value!.ToString());
        user.Press("down", "enter", "enter");
        user.Sees("1 passed by, the last: Current per output.");
    }

    /// <summary>1.5 A at 24 V are 36 W; 15 A from mains of 100 V or more are 1,500 W.</summary>
    [Theory]
    [InlineData("15", true)]
    [InlineData("3.7", true)]
    [InlineData("3.6", false)]
    [InlineData("0.6", false)]
    public void APanelThatWouldDrawManyTimesWhatItGivesIsAskedAbout(string amps, bool asks)
    {
        using var user = AtPanel();
        foreach (var value in new[] { "12", "24", "1.5", "1.5" })
            user.Press("enter").Type(value).Press("esc");
        while (((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context) != PanelTypeFacts.InputCurrent)
            user.Press("down");
        user.Press("enter").Type(amps);
        Assert.Equal(asks, user.Screen.Contains("and its outputs give 36 W together", StringComparison.Ordinal));
    }

    [Fact]
    public void ADigitBeginsTheValueUnderTheCursor()
    {
        using var user = AtPanel();
        user.Press("1", "2", "enter");
        Assert.Equal(12, user.House.ItemsOf(ItemKind.PanelType).Last().Get(PanelTypeFacts.Outputs));
        user.Press("esc", "end", "3").Sees("3 is Panels.");
    }

    [Fact]
    public void AFigureIsNoNameOfAPartAndAVoltageHasItsUnit()
    {
        using var user = AtPanel();
        user.Press("end", "up", "up", "enter").Type("120").Sees("\"120\" would be the name of a part, and has no letter.").Press("esc");
        user.Press("home");
        while (((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context) != PanelTypeFacts.InputVolts)
            user.Press("down");
        user.Press("enter").Type("15").Sees("\"15\" has no unit").Type("120 V").Press("esc");
        Assert.Equal("120 V", user.House.ItemsOf(ItemKind.PanelType).Last().Get(PanelTypeFacts.InputVolts));
    }
}

using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Screens.Kit;
using TrimOut.Screens.Sheets;
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
    public void EnterAndItsKeyOnAValueThatIsThereSayThatItWasChecked()
    {
        using var user = AtRoller(CoveringKindFacts.RunningCurrent);
        user.Press("enter").Sees("Running current 0.8 A: Enter and then = say that you checked it").Press("enter")
            .Sees("Running current 0.8 A: does the sheet in hand say so?").Press("=").Sees("Running current 0.8 A is said to be checked now");
        Assert.Contains(CoveringKindFacts.LeastVolts, SheetValues.NotHeldIn(user.House.ItemsOf(ItemKind.CoveringKind).First()));
    }

    /// <summary>Beside an open line stands what is saved, and what will be as such.</summary>
    [Fact]
    public void WhatWillBeOnceAValueIsTakenIsSaidAsWhatWillBe()
    {
        _job.SayOf("Roller", CoveringKindFacts.CentreFrom, "");
        using var user = AtRoller(CoveringKindFacts.CentreFrom);
        user.Press("enter").Sees("for it now.").DoesNotSee("Once Enter has taken it");
        user.Write("none").Sees("for it now.").Sees("Once Enter has taken it: no check").DoesNotSee("only by it, and nobody checked it");
        user.Press("enter").DoesNotSee("Once Enter has taken it: no check").Sees("How far to the right of the middle");
        Assert.Equal(CoveringKindFacts.None, user.House.ItemsOf(ItemKind.CoveringKind).First().Get(CoveringKindFacts.CentreFrom));
    }

    /// <summary>A stop that a file takes away by a value that nobody checked is no pass: another value may be a stop again.</summary>
    [Fact]
    public void AStopThatGoesOnlyByAnUncheckedValueOfAFileSaysSo()
    {
        _job.Window("W02", kind: "Roller").Say("W02", WindowFacts.Mount, "inside").Say("W02", WindowFacts.RoughWidth, "200")
            .Say("W02", WindowFacts.RoughHeight, "60");
        var part = PartSheet.Of(_job.House, _job.House.ItemsOf(ItemKind.CoveringKind).First());
        var wider = CoveringKindFacts.Widest.ReadTyped("240", _job.House).Value;
        _desk.Kept.Add(part with { Values = [.. part.Values.Select(v => v.Fact == CoveringKindFacts.Widest ? v with { Stored = wider } : v)] });
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9", "O").Sees("only by values that nobody checked").Sees("Then no longer found\u00A0?: STOP W02: It is to be")
            .Sees("It passes only by").Sees("nobody checked:").Sees("Widest of Roller");
    }

    /// <summary>
    /// Tired, with gloves, or ahead of a slow laptop: however often Enter comes, alone or behind a value that was typed, nothing counts as looked at that
    /// nobody looked at, whether a value stands there or none.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(40)]
    public void HoweverOftenEnterIsPressedNoValueIsMarkedThatNobodyLookedAt(int times)
    {
        _job.SayOf("Roller", CoveringKindFacts.StartingCurrent, "").SayOf("Roller", CoveringKindFacts.LeastVolts, "");
        using var user = AtRoller(CoveringKindFacts.LeastVolts);
        var before = SheetValues.Of(Roller(user.House)).Where(f => SheetMark.Holds(Roller(user.House), f)).ToList();
        user.Press("enter");
        user.Shell.TextChanged("9.5");
        for (var n = 0; n < times; n++)
            user.Press("enter");
        Assert.Equal(before.Append(CoveringKindFacts.LeastVolts).ToHashSet(),
            SheetValues.Of(Roller(user.House)).Where(f => SheetMark.Holds(Roller(user.House), f)).ToHashSet());
        Assert.Empty(SheetValues.NotOnSheetIn(Roller(user.House)));
    }

    /// <summary>Enter answers no question, and Esc goes back to the value, as it was.</summary>
    [Fact]
    public void WhatIsAskedOfAValueIsLeftByAnyOtherKey()
    {
        using var user = AtRoller(CoveringKindFacts.RunningCurrent);
        user.Press("enter", "enter", "enter").Sees("Enter answers nothing here.").Press("esc");
        Assert.Equal($"{Roller(user.House).Id}/{CoveringKindFacts.RunningCurrent.Name}", user.Shell.Typing!.Entry.InPlace);
        Assert.Same(_job.House, user.House);
        user.Press("enter", "=");
        Assert.True(SheetMark.Holds(Roller(user.House), CoveringKindFacts.RunningCurrent));
    }

    /// <summary>Whoever types on past the question, over a blank or over a value, has typed the value, whatever it begins with.</summary>
    [Theory]
    [InlineData("", "24")]
    [InlineData("", "9.5")]
    [InlineData("12", "24")]
    public void WhatIsTypedOnPastTheQuestionIsTheValue(string before, string typed)
    {
        _job.SayOf("Roller", CoveringKindFacts.MotorVolts, before);
        using var user = AtRoller(CoveringKindFacts.MotorVolts);
        user.Press("enter", "enter").Press([.. typed.Select(c => c.ToString())]).Press("enter");
        Assert.Equal($"{typed} V", CoveringKindFacts.MotorVolts.ShowOf(Roller(user.House), user.House));
    }

    [Fact]
    public void AWordThatBeginsWithYesIsAWord()
    {
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9", "down", "s");
        while (((SheetInHandScreen)user.Shell.Screen).Part(user.Shell.Context)!.Kind != ItemKind.CableType)
            user.Press("right");
        while (((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context) != CableTypeFacts.Colours)
            user.Press("down");
        user.Press("enter", "enter").Press([.. "yellow".Select(c => c.ToString())]).Press("enter");
        var cable = user.House.ItemsOf(ItemKind.CableType).First(c => user.House.NameOf(c) == "16/2");
        Assert.Equal("yellow", CableTypeFacts.Colours.ShowOf(cable, user.House));
        Assert.Empty(SheetValues.NotOnSheetIn(cable));
    }

    [Fact]
    public void APartThatIsInUseIsRemovedOnlyAfterAQuestionThatNamesWhatUsesIt()
    {
        _job.Say("W01", UnitFacts.Kind, "Roller");
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9", "enter", "X").Sees("Remove Roller (covering-kind)? It is used by 1: W01.").Press("enter", "esc");
        Assert.NotNull(user.House.Units.Single().Kind);
        user.Press("X", "X");
        Assert.Null(user.House.Units.Single().Kind);
        Assert.Equal("Roller (removed)", user.House.Units.Single().Show(UnitFacts.Kind));
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

    [Fact]
    public void TwoFilesOfOnePartAreToldApartByEditionAndNameAndTheFindingsThatComeAreNamed()
    {
        PartSheet Roller(string edition, string volts) => PartText.Read("trimout-part: 1\nkind: covering-kind\nname: Roller\nsheet: A sheet of a very long "
            + $"title\nedition: {edition}\nheld-by: Ash\nheld-on: 2026-03-02\nmotor-volts: 12 V\nleast-volts: {volts} V\n").Value;
        _desk.Kept.AddRange([Roller("rev C", "10"), Roller("rev D", "13")]);
        using var user = new TerminalUser(_desk, _job.Scribe);
        user.Press("9", "O").Sees("edition rev C, Roller-1.part.txt").Sees("edition rev D, Roller-2.part.txt");
        user.Press("down").Sees("Then found: STOP Roller: ");
    }

    /// <summary>Nine files that can't be read, and one that can: each is reached with its reason, and their number is said.</summary>
    [Fact]
    public void EveryFileThatCanNotBeReadIsReachedWithItsReason()
    {
        _desk.Kept.Add(PartText.Read("trimout-part: 1\nkind: hub-type\nname: Attic hub\ndevices: 7\n").Value);
        _desk.Broken.AddRange(Enumerable.Range(1, 9).Select(n => $"part-{n}.part.txt: Line {n}: write a name, a colon and a value."));
        using var user = new TerminalUser(_desk, _job.Scribe);
        user.Press("9", "O").Sees("9 files of it can't be read: they stand last").Sees("Attic hub");
        for (var n = 1; n <= 9; n++)
            user.Press("down").Sees($"part-{n}.part.txt: Line {n}: write a name").Sees("nothing of it is taken");
        user.Press("enter").Sees("This file can't be read.");
        user.Press("/").Type("part-7").Sees("part-7.part.txt").DoesNotSee("part-8.part.txt");
    }

    [Fact]
    public void AFileThatNoLongerSaysItsHeldEditionIsToBeCheckedAgain()
    {
        _desk.Kept.Add(PartText.Read("trimout-part: 1\nkind: hub-type\nname: Attic hub\nedition: C\nheld-by: Ash\nheld-on: 2026-03-02\ndevices: 7\n").Value);
        using var user = new TerminalUser(_desk, _job.Scribe, width: 130);
        user.Press("9", "O").Sees("0 of 1 value checked").Sees("no known edition: check again");
        // Also where the house has the part already, value for value.
        user.Press("enter").Sees("value for value").Sees("its file says against no known edition. Check again.");
    }

    /// <summary>On the smallest screen: old and new values first, and a key for the rest.</summary>
    [Fact]
    public void WhatAPartChangesIsShownOldAndNewBeforeWhatTheChecksSay()
    {
        var type = _job.House.ItemsOf(ItemKind.PanelType).Single();
        var part = PartSheet.Of(_job.House, type);
        _desk.Kept.Add(part with { Values = [.. part.Values.Select(v => v.Fact == PanelTypeFacts.Supply ? v with { Stored = "30" } : v)] });
        foreach (var tag in (string[])["W81", "W82", "W83", "W84", "W85"])
            _job.Window(tag);
        using var user = new TerminalUser(_desk, _job.Scribe, width: 80, height: 24);
        user.Press("9", "O").Sees("1 value changes").Sees($"Supply: {PanelTypeFacts.Supply.ShowOf(type, _job.House)} ");
    }

    /// <summary>A box has a length, whatever its sheet says: what nobody was asked for is not said to be missing on the sheet.</summary>
    [Fact]
    public void OnlyWhatWasAskedAndLeftCountsAsNotFoundOnTheSheet()
    {
        var scribe = new Scribe(new MemoryStore(), new FakeTimeProvider(), "Ash");
        Assert.True(NewHouse.Begin("Blank house", Core.Units.DisplayUnits.Inches).Then(scribe.Record).Ok);
        using var user = new TerminalUser(_desk, scribe, width: 110, height: 40);
        user.Press("9");
        while (((KitScreen)user.Shell.Screen).Current(user.Shell.Context)!.Kind != ItemKind.CableType)
            user.Press("down");
        user.Press("s").DoesNotSee("Not found on the sheet").Sees("blank and not asked yet.");
        user.Press("enter").Type("Sheet 4").Type("A").Press("enter", "enter", "=").Sees("Stranding").Press("enter", "=");
        user.Press("esc").Sees("Not found on the sheet, 1: Stranding.").DoesNotSee("Box length;");
        // It is known of the part, and not of the screen: who opens it again, or on another day, need not look again.
        user.Press("esc").Press("s").Sees("Not found on the sheet, 1: Stranding.");
        using var later = new TerminalUser(_desk, scribe, width: 110, height: 40);
        later.Press("9");
        while (((KitScreen)later.Shell.Screen).Current(later.Shell.Context)!.Kind != ItemKind.CableType)
            later.Press("down");
        later.Press("s").Sees("Not found on the sheet, 1: Stranding.");
    }

    [Fact]
    public void ADayOfCheckingThatIsStillToComeIsSaid()
    {
        _desk.Kept.Add(PartText.Read("trimout-part: 1\nkind: hub-type\nname: Attic hub\nheld-by: Ash\nheld-on: 2999-01-01\ndevices: 7\n")
            .Value.On(new DateOnly(2026, 3, 2)));
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110);
        user.Press("9", "O").Sees("checked on 2999-01-01, which is").Sees("0 of 1 value checked");
    }

    [Fact]
    public void WhoReadTheSheetAndWhenStandsInTheHouseWhereItWasRead()
    {
        using var user = AtRoller(CoveringKindFacts.MotorVolts);
        user.Press("enter", "enter", "=", "esc", "esc", "enter", "end").Sees("Checked by").Sees("Test crew").Sees("2026-03-02");
    }

    private TerminalUser AtPanel()
    {
        var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9");
        while (((KitScreen)user.Shell.Screen).Current(user.Shell.Context)!.Kind != ItemKind.PanelType)
            user.Press("down");
        user.Press("n").Type("Attic panel").Press("s");
        while (((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context) != PanelTypeFacts.Outputs)
            user.Press("down");
        return user;
    }

    private TerminalUser AtCheckedRoller(Fact fact)
    {
        _job.SayOf("Roller", AboutSheet.Of(ItemKind.CoveringKind, AboutSheet.Sheet), "Sheet 4")
            .SayOf("Roller", AboutSheet.Of(ItemKind.CoveringKind, AboutSheet.Edition), "A").Do(j => KitCheck.All(j.House, Roller(j.House)));
        return AtRoller(fact);
    }

    private static Item Roller(House house) => house.ItemsOf(ItemKind.CoveringKind).First();

    private static Fact Edition => AboutSheet.Of(ItemKind.CoveringKind, AboutSheet.Edition);

    [Fact]
    public void TheSheetAndItsEditionAreAskedBeforeAnyValueSoThatWhatIsReadCountsAgainstThem()
    {
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9", "s", "enter").Sees("Maker's sheet").Type("Sheet 4").Type("A").Press("esc");
        Assert.Equal(["Sheet 4", "A"], new[] { AboutSheet.Sheet, AboutSheet.Edition }.Select(n => Roller(user.House).Latest(n)?.Stored));
        user.Press("esc", "s");
        Assert.Equal(Edition, ((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context));
    }

    [Theory]
    [InlineData("new edition")]
    [InlineData("typing mistake")]
    public void AnotherEditionIsANewOneOrATypingMistakeAndOnlyWithANewOneValuesWait(string answer)
    {
        using var user = AtCheckedRoller(Edition);
        var values = SheetValues.Of(Roller(user.House)).Count(f => SheetMark.Holds(Roller(user.House), f));
        user.Press("enter").Type("B").Sees("checked against A.");
        Assert.Equal("A", Roller(user.House).Latest(Edition)?.Stored);
        user.Type("").Sees("Say which").Type(answer).Press("esc");
        Assert.Equal("B", Roller(user.House).Latest(Edition)?.Stored);
        Assert.Equal(answer == "new edition" ? values : 0, SheetValues.NotHeldIn(Roller(user.House)).Count());
        var left = ((SheetInHandScreen)user.Shell.Screen).Left(user.Shell.Context);
        Assert.Equal(answer == "new edition", left.EndsWith($" {values} values were checked against another edition, and wait to be checked against this one.",
            StringComparison.Ordinal));
        user.Press("u", "u");
        Assert.Equal("A", Roller(user.House).Latest(Edition)?.Stored);
        Assert.Empty(SheetValues.NotHeldIn(Roller(user.House)));
    }

    [Theory]
    [InlineData("another sheet")]
    [InlineData("typing mistake")]
    public void AnotherSheetIsAskedAboutAsAnotherEditionIs(string answer)
    {
        var sheet = AboutSheet.Of(ItemKind.CoveringKind, AboutSheet.Sheet);
        using var user = AtCheckedRoller(Edition);
        user.Press("up");
        var values = SheetValues.Of(Roller(user.House)).Count(f => SheetMark.Holds(Roller(user.House), f));
        user.Press("enter").Type("Sheet 5").Sees("checked against Sheet 4.").Type("").Sees("Say which").Type(answer).Press("esc");
        Assert.Equal("Sheet 5", Roller(user.House).Latest(sheet)?.Stored);
        Assert.Equal(answer == "another sheet" ? values : 0, SheetValues.NotHeldIn(Roller(user.House)).Count());
    }

    /// <summary>What was marked while no sheet and no edition was named counts against one that is named later only where somebody says so.</summary>
    [Theory]
    [InlineData(AboutSheet.Sheet, "check again")]
    [InlineData(AboutSheet.Sheet, "this one")]
    [InlineData(AboutSheet.Edition, "check again")]
    [InlineData(AboutSheet.Edition, "this one")]
    public void ASheetThatIsNamedAfterValuesWereCheckedIsAskedAbout(string name, string answer)
    {
        var about = AboutSheet.Of(ItemKind.CoveringKind, name);
        _job.Do(j => KitCheck.All(j.House, Roller(j.House)));
        var values = SheetValues.Of(Roller(_job.House)).Count(f => SheetMark.Holds(Roller(_job.House), f));
        using var user = AtRoller(about);
        user.Press("enter").Type("2").Sees($"{values} values were checked against {(name == AboutSheet.Sheet ? "a sheet" : "an edition")} that nobody named.")
            .Type("").Sees("Say which").Type(answer).Press("esc");
        Assert.Equal("2", Roller(user.House).Latest(about)?.Stored);
        Assert.Equal(answer == "check again" ? values : 0, SheetValues.NotHeldIn(Roller(user.House)).Count());
    }

    [Fact]
    public void AllCheckedAsksWhichSheetThatIsWhereNobodySaid()
    {
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9", "C").Sees("Which sheet that is nobody said yet").Type("Sheet 7").Sees("Did you check each against the sheet in hand").Press("y");
        Assert.Equal("Sheet 7", Roller(user.House).Latest(AboutSheet.Sheet)?.Stored);
        Assert.Empty(SheetValues.NotHeldIn(Roller(user.House)));
    }

    [Theory]
    [InlineData("enter")]
    [InlineData("tab")]
    public void TheSheetOfDetailsAsksTheSame(string key)
    {
        AtCheckedRoller(Edition).Dispose();
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9", "enter");
        while (((SheetScreen)user.Shell.Screen).Current!.Fact != Edition)
            user.Press("down");
        user.Press("enter");
        user.Shell.TextChanged("B");
        user.Press(key).Sees("typing mistake: A was a slip").Type("typing mistake").Press("esc");
        Assert.Equal("B", Roller(user.House).Latest(Edition)?.Stored);
        Assert.Empty(SheetValues.NotHeldIn(Roller(user.House)));
    }

    [Fact]
    public void FromAValueThatWasCheckedEnterGoesToTheRowBelow()
    {
        using var user = AtCheckedRoller(CoveringKindFacts.MotorVolts);
        user.Press("enter").Type("24");
        Assert.Equal($"{Roller(user.House).Id}/{CoveringKindFacts.LeastVolts.Name}", user.Shell.Typing!.Entry.InPlace);
        user.Type("21.5").Press("enter");
        Assert.Equal(21.5m, Roller(user.House).Get(CoveringKindFacts.LeastVolts)!.Value.Volts);
        Assert.Equal($"{Roller(user.House).Id}/{CoveringKindFacts.StartingCurrent.Name}", user.Shell.Typing!.Entry.InPlace);
    }

    [Fact]
    public void AfterAValueWasSaidToBeCheckedTheNextOneIsNamedWithWhatItMayBe()
    {
        using var user = AtRoller(CoveringKindFacts.MotorVolts);
        user.Press("enter", "enter", "=").Sees("Motor volts 12 V is said to be checked now").Sees("Minimum volts 10.2 V: Enter and then =");
    }

    [Fact]
    public void OneKeyTwiceChecksNothingAndTheQuestionSaysAgainstWhichEditionValuesWereLookedAt()
    {
        using var user = AtCheckedRoller(Edition);
        user.Press("enter").Type("B").Type("new edition").Press("esc", "esc", "C")
            .Sees("checked against edition A alone. Did you check each against the sheet in hand").Press("C");
        Assert.NotEmpty(SheetValues.NotHeldIn(Roller(user.House)));
        user.Press("C", "y");
        Assert.Empty(SheetValues.NotHeldIn(Roller(user.House)));
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
        user.Press("down", "enter", "enter", "=");
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
    public void ADigitLeavesTheSheetWhereNoValueIsBeingTypedAndEscComesBack()
    {
        using var user = AtPanel();
        user.Press("3").Sees("3 is Panels.").Press("esc");
        Assert.Equal(PanelTypeFacts.Outputs, ((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context));
        user.Press("1", "2", "esc").Press("enter");
        Assert.Equal(12, user.House.ItemsOf(ItemKind.PanelType).Last().Get(PanelTypeFacts.Outputs));
        // While a value is being typed a digit is one of its.
        user.Press("4");
        Assert.Equal("4", user.Shell.Typing!.Text);
    }

    [Fact]
    public void AFigureIsNoNameOfAPartAndAMainsVoltageIsShownWithItsUnit()
    {
        using var user = AtPanel();
        user.Press("home", "down", "down", "enter").Type("120").Sees("\"120\" would be the name of a part, and has no letter.").Press("esc");
        user.Press("home");
        while (((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context) != PanelTypeFacts.InputVolts)
            user.Press("down");
        user.Press("enter").Type("120").Press("esc").Sees("120 V");
        Assert.Equal("120 V", PanelTypeFacts.InputVolts.ShowOf(user.House.ItemsOf(ItemKind.PanelType).Last(), user.House));
    }

    [Fact]
    public void ACableIsAskedForItsNameToo()
    {
        using var user = AtBlankCable();
        user.Press("enter").Type("Sheet 4").Type("A");
        Assert.Equal("name", user.Shell.Typing!.Entry.InPlace!.Split('/')[1]);
        user.Type("16/2 direct burial").Press("esc");
        Assert.Contains(user.House.ItemsOf(ItemKind.CableType), c => user.House.NameOf(c) == "16/2 direct burial");
    }

    /// <summary>Few sheets say which conductor is plus, and the house may: left blank it is not said to be missing on the sheet.</summary>
    [Fact]
    public void WhichConductorIsPlusIsNothingThatASheetLacks()
    {
        using var user = AtBlankCable();
        while (((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context) != CableTypeFacts.Plus)
            user.Press("down");
        user.Press("enter", "enter", "esc").DoesNotSee("Not found on the sheet");
        Assert.Empty(SheetValues.NotOnSheetIn(user.House.ItemsOf(ItemKind.CableType).First()));
    }

    private TerminalUser AtBlankCable()
    {
        var scribe = new Scribe(new MemoryStore(), new FakeTimeProvider(), "Ash");
        Assert.True(NewHouse.Begin("Blank house", Core.Units.DisplayUnits.Inches).Then(scribe.Record).Ok);
        var user = new TerminalUser(_desk, scribe, width: 110, height: 40);
        user.Press("9");
        while (((KitScreen)user.Shell.Screen).Current(user.Shell.Context)!.Kind != ItemKind.CableType)
            user.Press("down");
        user.Press("s");
        return user;
    }

    [Fact]
    public void AValueThatWasCheckedAndThenChangedIsNotSaidToBeNeverChecked()
    {
        AtCheckedRoller(CoveringKindFacts.MotorVolts).Dispose();
        _job.SayOf("Roller", CoveringKindFacts.RunningCurrent, "3");
        using var user = AtRoller(CoveringKindFacts.MotorVolts);
        Assert.EndsWith(" 1 value was changed since it was checked.",
            ((SheetInHandScreen)user.Shell.Screen).Left(user.Shell.Context), StringComparison.Ordinal);
        user.Press("esc", "C").Sees("1 value changed since checked");
    }

    /// <summary>The house has a roller on a 16/2 and nothing else: their sheets before those of kinds that hang nowhere.</summary>
    [Fact]
    public void TheNextPartIsFirstOneThatTheHouseUses()
    {
        _job.Say("W01", RunFacts.Cable, "16/2");
        using var user = new TerminalUser(_desk, _job.Scribe, width: 110, height: 40);
        user.Press("9", "s").Sees("Sheet in hand: Roller").Press("right").Sees("Sheet in hand: 16/2").Press("right").Sees("Sheet in hand: Cellular")
            .Press("left", "left").Sees("Sheet in hand: Roller");
    }
}

using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Kit;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>Reads the sheets of one part of each sort off by keys, in a house with a blank kit, and counts the keys.</summary>
/// <param name="Shell">The house afterwards.</param>
/// <param name="Values">How many values were typed: all that a check reads.</param>
/// <param name="LeftOut">How many were left.</param>
/// <param name="Asked">How often y said that somebody looked: for what stood there already, and for what is not on the sheet.</param>
/// <param name="Strokes">Keys pressed, besides what was typed.</param>
internal sealed record SheetsInHand(ShellState Shell, int Values, int LeftOut, int Asked, int Strokes)
{
    private static readonly (ItemKind Kind, string Name)[] Parts =
    [
        (ItemKind.CoveringKind, "Roller"), (ItemKind.PanelType, "Panel"), (ItemKind.CableType, "16/2"), (ItemKind.HubType, "Hub"),
        (ItemKind.RemoteType, "Handheld"),
    ];

    public static SheetsInHand Do()
    {
        var scribe = new Scribe(new MemoryStore(), new FakeTimeProvider(), "Ash");
        Assert.True(NewHouse.Begin("Blank house", DisplayUnits.Inches).Then(scribe.Record).Ok);
        var sheets = new SheetsInHand(new ShellState(new TestDesk(new FakeTimeProvider()), scribe), 0, 0, 0, 0);
        var read = new TestJob().House;
        sheets.Shell.Press("9");
        return Parts.Aggregate(sheets, (s, part) => s.Read(part.Kind, part.Name, read));
    }

    private SheetsInHand Read(ItemKind kind, string name, House read)
    {
        var (values, left, asked, strokes) = (Values, LeftOut, Asked, Strokes);
        Shell.Press("home");
        while (((KitScreen)Shell.Screen).Current(Shell.Context) is { } at && (at.Kind != kind || Shell.Context.House.NameOf(at) != name))
            Shell.Press("down");
        Press("s");
        Press("enter");
        var says = read.ItemsOf(kind).First(i => kind == ItemKind.PanelType || read.NameOf(i) == name);
        while (Shell.Typing is not null)
        {
            var fact = ((SheetInHandScreen)Shell.Screen).Current(Shell.Context)!;
            var text = ChecksByValue.Of(fact).Count == 0 ? "" : fact == CoveringKindFacts.MiddleScrew ? "none" : fact.ShowOf(says, read);
            if (text.Length > 0)
                Shell.TextChanged(text);
            values += text.Length > 0 ? 1 : 0;
            left += text.Length > 0 ? 0 : 1;
            Press("enter");
            if (Shell.Typing is null && Shell.Draw(110, 40).ToText().Contains("= says so", StringComparison.Ordinal))
            {
                Press("=");
                asked++;
            }
            Assert.Null(Shell.Typing?.Refused);
        }
        Press("esc");
        return new SheetsInHand(Shell, values, left, asked, strokes);

        void Press(string key)
        {
            Shell.Press(key);
            strokes++;
        }
    }
}

public class SheetsInHandTests
{
    [Fact]
    public void ANewerEditionThatLacksAValueIsTakenOnlyAfterAQuestion()
    {
        var job = new TestJob();
        var type = job.House.ItemsOf(ItemKind.PanelType).Single();
        var part = PartSheet.Of(job.House, type);
        var newer = part with
        {
            About = part.About.SetItem(AboutSheet.Edition, "2"),
            Values = [.. part.Values.Where(v => v.Fact != PanelTypeFacts.TotalCurrent)],
        };
        var desk = new TestDesk(new FakeTimeProvider());
        desk.Kept.Add(newer);
        var shell = new ShellState(desk, job.Scribe);
        shell.Press("9");
        shell.Press("O");
        while (shell.Doing is not null)
            shell.Tick();
        Assert.Contains("Not in this edition: Current of all outputs.", shell.Draw(120, 40).ToText(), StringComparison.Ordinal);
        shell.Press("enter");
        Assert.Null(Edition());
        shell.Press("y");
        Assert.Equal("2", Edition());
        Assert.NotNull(shell.Context.House.Find(type.Id)!.Latest(PanelTypeFacts.TotalCurrent)?.Stored);

        string? Edition() => shell.Context.House.Find(type.Id)!.Latest(AboutSheet.Edition)?.Stored;
    }

    /// <summary>A new house with blanks: the walk, the cables and the card of a unit say what waits for makers' sheets, and which keys lead there.</summary>
    [Fact]
    public void WhereItMattersABlankKitSaysThatItsSheetsAreToBeAsked()
    {
        var scribe = new Scribe(new MemoryStore(), new FakeTimeProvider(), "Ash");
        Assert.True(NewHouse.Begin("Blank house", DisplayUnits.Inches).Then(scribe.Record).Ok);
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), scribe);
        shell.Press("n");
        shell.TextChanged("W01 roller left 36x60 SW floor inside panel @Kitchen");
        shell.Press("enter");
        shell.Press("esc");
        Assert.Matches(@"for makers'\s+sheets \(9\)", Seen(100, "1"));
        Assert.Matches("[1-9][0-9]* for makers' sheets \\(9\\)", Seen(100, "2"));
        var run = scribe.House.Units.Single().Run!;
        Assert.True(SetFact.Typed(scribe.House, run.Item, RunFacts.Cable, "16/2").Then(scribe.Record).Ok);
        shell = new ShellState(new TestDesk(new FakeTimeProvider()), scribe);
        Assert.Contains("Ask the sheets (9): 16/2: Longest run; Roller: Minimum volts, Running current, Starting current.", Seen(140, "4"),
            StringComparison.Ordinal);

        string Seen(int width, string key)
        {
            shell.Press(key);
            return shell.Draw(width, 40).ToText();
        }
    }

    [Fact]
    public void WhatTheProgramBeganWithIsMarkedOnTheSheetOfTheHouse()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Scribe);
        shell.Press("0");
        Assert.Contains("= one or two family", shell.Draw(140, 60).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void BeforeTheValuesItAsksForTheSheetItsEditionAndTheNameAndNoneOfTheseIsAValueToCheck()
    {
        var scribe = new Scribe(new MemoryStore(), new FakeTimeProvider(), "Ash");
        Assert.True(NewHouse.Begin("Blank house", DisplayUnits.Inches).Then(scribe.Record).Ok);
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), scribe);
        shell.Press("9");
        while (((KitScreen)shell.Screen).Current(shell.Context)!.Kind != ItemKind.HubType)
            shell.Press("down");
        shell.Press("s");
        shell.Press("enter");
        foreach (var typed in new[] { "Sheet 4", "B", "Hub of mine", "27" })
        {
            shell.TextChanged(typed);
            shell.Press("enter");
        }
        Assert.Null(shell.Typing);
        var hub = shell.Context.House.ItemsOf(ItemKind.HubType).Single();
        Assert.Equal("Hub of mine", shell.Context.House.NameOf(hub));
        Assert.Equal(["Sheet 4", "B"], new[] { AboutSheet.Sheet, AboutSheet.Edition }.Select(n => hub.Latest(n)?.Stored));
        Assert.Empty(SheetValues.NotHeldIn(hub));
        Assert.Equal("Every value of Hub of mine is there. The sheet: Sheet 4, edition B.",
            ((SheetInHandScreen)shell.Screen).Left(shell.Context));
        shell.Press("esc");
        shell.Press("enter");
        shell.Press("end");
        Assert.DoesNotContain("Not checked against", shell.Draw(140, 40).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void EveryValueThatACheckReadsIsThereAndHeldAfterOneKeyAValueThreeASheetAndOneMoreForWhatIsAsked()
    {
        var sheets = SheetsInHand.Do();
        Assert.Equal(sheets.Values + sheets.LeftOut + sheets.Asked + 3 * 5, sheets.Strokes);
        Assert.True(sheets.Values > 25);
        var roller = sheets.Shell.Context.House.ItemsOf(ItemKind.CoveringKind).First();
        Assert.DoesNotContain(SheetValues.BlankIn(roller), f => ChecksByValue.Of(f).Count > 0
            && f != CoveringKindFacts.WithoutPower);
        Assert.DoesNotContain(SheetValues.NotHeldIn(roller), f => f != CoveringKindFacts.RaisedForm);
    }

    [Fact]
    public void APartThatWasKeptIsOfferedForTheNextHouseAndShowsWhatItChanges()
    {
        var sheets = SheetsInHand.Do();
        var desk = new TestDesk(new FakeTimeProvider());
        desk.Keep([PartSheet.Of(sheets.Shell.Context.House, sheets.Shell.Context.House.ItemsOf(ItemKind.CoveringKind).First())]);
        var shell = new ShellState(desk, null);
        shell.Press("n");
        foreach (var text in new[] { "Next house", "inches", "my kit" })
        {
            shell.TextChanged(text);
            shell.Press("enter");
        }
        var roller = Assert.Single(shell.Context.House.ItemsOf(ItemKind.CoveringKind));
        Assert.DoesNotContain(SheetValues.NotHeldIn(roller), f => f != CoveringKindFacts.RaisedForm);
        Assert.NotEmpty(shell.Context.House.ItemsOf(ItemKind.HubType));
    }
}

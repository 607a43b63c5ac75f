using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Walk;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Every list is narrowed as one types, by one key; what hides rows says so, and Esc leaves it as it was.</summary>
public class FilterTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    private static readonly PaperChoice[] Papers =
        [new("binder", "Owner's binder", "the owner"), new("labels", "Labels", "the crew"), new("order", "Order", "the maker")];

    /// <summary>Somebody with papers, two houses, parts in the kit folder, and a copy of the house with one window more and two values that disagree.</summary>
    private static TerminalUser Ridge(int width = 80, int height = 24)
    {
        var scribe = SampleHouse.Open("ridge-house", Clock);
        var desk = new TestDesk(Clock) { Papers = Papers, Houses = [new("a", "Corner house", true, "A sample."), new("b", "Elm", false, "~/houses")] };
        desk.Kept.AddRange(((ItemKind[])[ItemKind.CableType, ItemKind.PanelType]).SelectMany(scribe.House.ItemsOf).Select(p => PartSheet.Of(scribe.House, p)));
        var other = new TestJob(store: new MemoryStore("stick", scribe.Log.Changes)).Say("W03", WindowFacts.RoughWidth, "31").Say("W05", WindowFacts.Note, "x");
        desk.OtherCopies["stick/ridge.trimout"] = new CopyRead(other.Scribe.Log, []);
        desk.OtherCopies["laptop/other.trimout"] = new Core.Refusal("It is no house file.");
        return new(desk, scribe, width, height);
    }

    private static TerminalUser At(string way)
    {
        var user = Ridge();
        return user.Press(way.Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>Where one goes back to all of it with what was looked for under the cursor.</summary>
    private static readonly string[] GoesThere = ["0", "9 s"];

    public static TheoryData<string, string> Lists() => new()
    {
        { "", "w03" }, { "r", "w03" }, { "3", "w03" }, { "4", "w03" }, { "5", "w03" }, { "6", "w03" }, { "7", "binder" }, { "8", "w03" }, { "9", "blank" },
        { "0", "meter" }, { "2", "w03" }, { "9 s", "edition" }, { "9 O", "panel" }, { "y", "roll" }, { "esc y", "elm" }, { "?", "undo" },
        { "8 O", "stick" }, { "8 O enter", "W03" }, { "8 enter", "w03" },
    };

    [Theory]
    [MemberData(nameof(Lists))]
    public void AListShowsLessWithEachLetterAndAllAgainWithEsc(string screen, string typed)
    {
        using var user = At(screen);
        var list = Assert.IsAssignableFrom<IFiltered>(user.Shell.Screen);
        var all = list.Count(user.Shell.Context);
        Assert.Equal(all.All, all.Shown);
        user.Press("/").Write(typed);
        var (shown, of) = ((IFiltered)user.Shell.Screen).Count(user.Shell.Context);
        Assert.InRange(shown, 1, of - 1);
        Assert.Equal(all.All, of);
        user.Sees(typed).Press("esc");
        Assert.Equal(all, ((IFiltered)user.Shell.Screen).Count(user.Shell.Context));
    }

    [Theory]
    [MemberData(nameof(Lists))]
    public void WhatHidesRowsSaysSoUntilEsc(string screen, string typed)
    {
        if (GoesThere.Contains(screen))
            return;
        using var user = At(screen);
        user.Press("/").Write(typed).Press("enter");
        var list = (IFiltered)user.Shell.Screen;
        Assert.Equal(typed, list.Search);
        user.Sees($"\"{typed}\"").Press("down", "esc").Sees("All is shown again.");
        Assert.Equal("", ((IFiltered)user.Shell.Screen).Search);
        Assert.Equal(list.GetType(), user.Shell.Screen.GetType());
    }

    [Theory]
    [MemberData(nameof(Lists))]
    public void WhatNothingHasIsNotTaken(string screen, string typed)
    {
        Assert.NotEqual("zzqx", typed);
        using var user = At(screen);
        user.Press("/").Write("zzqx").Press("enter").Sees("Nothing here has \"zzqx\".");
        Assert.NotNull(user.Shell.Typing);
    }

    [Fact]
    public void UpAndDownChooseWhileOneTypesAndEnterKeepsTheRow()
    {
        using var user = Ridge();
        user.Press("/").Write("w0").Press("down", "down", "enter");
        var chosen = ((JobSheetScreen)user.Shell.Screen).Current(user.Shell.Context)!.Tag;
        user.Press("esc");
        Assert.Equal(chosen, ((JobSheetScreen)user.Shell.Screen).Current(user.Shell.Context)!.Tag);
    }

    [Fact]
    public void ALongSheetGoesToADetailByAFewLettersAndShowsAllAgain()
    {
        using var user = Ridge();
        user.Press("enter");
        var rows = ((SheetScreen)user.Shell.Screen).Rows.Count;
        user.Press("/").Write("tail win").Press("enter");
        var sheet = (SheetScreen)user.Shell.Screen;
        Assert.Equal(RunFacts.TailAtWindow, sheet.Current!.Fact);
        Assert.Equal(rows, sheet.Rows.Count);
        user.Press("enter");
        Assert.NotNull(user.Shell.Typing);
    }

    [Fact]
    public void WhatIsCopiedIsWhatTheFilterShows()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), SampleHouse.Open("ridge-house", new FakeTimeProvider()), Look.Dark);
        var tried = 0;
        foreach (var key in new[] { "3", "5", "8", "9" })
        {
            shell.Press(key);
            var screen = (IFiltered)shell.Screen;
            var all = ((ITable)screen).Table(shell.Context).Count();
            var some = ((ITable)screen.Searching("a 0", shell.Context)).Table(shell.Context).Count();
            Assert.True(some < all, shell.Screen.GetType().Name);
            tried++;
        }
        Assert.Equal(4, tried);
    }

    [Fact]
    public void TheCardOfTheHistoryIsOfTheChangeThatTheFilterShows()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Window("W02").Window("W03").Scribe, Look.Dark);
        foreach (var key in new[] { "8", "/" })
            shell.Press(key);
        shell.TextChanged("W02");
        var seen = shell.Draw(140, 40).ToText();
        Assert.Contains("W02", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("W03", seen, StringComparison.Ordinal);
    }

    /// <summary>A text is no list, and the nine figures of what-if and the eleven phases stand on every screen.</summary>
    private static readonly string[] NoList = ["A paper that is looked at", "What if", "Hours"];

    /// <summary>Whatever goes through rows can be narrowed: a screen that comes later is found by its keys for that.</summary>
    [Fact]
    public void EveryScreenWithAListHasTheKey() =>
        Assert.Equal(NoList.Order(), KeyTableTests.EveryScreen().Where(s => s.Keys.Any(k => k.Strokes.Contains("pagedown")))
            .Where(s => s is not IFiltered || !s.Keys.Any(k => k.Strokes.Contains("/"))).Select(KeysPageTests.Name).Order());

    [Fact]
    public void EveryScreenThatThereIsIsLookedAt() => Assert.Equal(
        typeof(IScreen).Assembly.GetTypes().Where(t => t is { IsAbstract: false, IsInterface: false } && t.IsAssignableTo(typeof(IScreen))).Select(t => t.Name)
            .Order(),
        KeyTableTests.EveryScreen().Select(s => s.GetType().Name).Distinct().Order());

    [Fact]
    public void AWalkGoesOnOnlyToThoseThatAreShown()
    {
        using var user = new TerminalUser(new TestDesk(Clock), new TestJob().Window("W01", "Kitchen").Window("W02", "Study").Window("W03", "Kitchen").Scribe);
        user.Press("2", "]").Press("/").Write("kitchen").Press("enter");
        string Tag() => ((WalkScreen)user.Shell.Screen).Subject(user.Shell.Context)!.Name;
        Assert.Equal("W01", Tag());
        user.Press("right");
        Assert.Equal("W03", Tag());
        user.Press("right");
        Assert.Equal("W03", Tag());
        user.Press("]");
        Assert.Equal(("W03", "kitchen"), (Tag(), ((WalkScreen)user.Shell.Screen).Search));
        user.Press("esc", "right");
        Assert.Equal("W02", Tag());
    }

    [Fact]
    public void AStepThatIsDoneForAllThatAreShownIsNotMarkedForOthers()
    {
        using var user = new TerminalUser(new TestDesk(Clock), new TestJob().Window("W01", "Kitchen").Window("W02", "Study").Scribe);
        user.Press("2", "]", "]", "/").Write("kitchen").Press("enter");
        var step = ((WalkScreen)user.Shell.Screen).Step(user.Shell.Context)!;
        user.Press("x");
        for (var asked = 0; user.Shell.Typing is not null && asked < 6; asked++)
            user.Type(user.Shell.Typing.Entry.Label.StartsWith("Why", StringComparison.Ordinal) ? "pulled by the builder" : "24");
        user.Sees("That step is done for every one that is shown.");
        Assert.Null(user.House.Units[1].MarkOf(step));
    }

    [Fact]
    public void TheCutPlanFindsTheBoxThatARunComesOutOf()
    {
        var shell = new ShellState(new TestDesk(Clock), SampleHouse.OpenWithACut(Clock), Look.Dark);
        foreach (var key in new[] { "4", "p", "/" })
            shell.Press(key);
        shell.TextChanged("w08");
        shell.Press("enter");
        var plan = (TrimOut.Screens.Cables.CutPlanScreen)shell.Screen;
        Assert.Equal(1, plan.Boxes);
        Assert.Contains("cut at W08", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        shell.Press("esc");
        Assert.Equal("", ((IFiltered)shell.Screen).Search);
    }

    [Fact]
    public void ManyHousesAreGoneThroughPageByPage()
    {
        var desk = new TestDesk(Clock) { Houses = [.. Enumerable.Range(1, 60).Select(n => new HouseChoice($"h{n}", $"House {n:00}", n > 57, "a house"))] };
        var shell = new ShellState(desk, null);
        for (var at = 1; at <= 60; at++)
        {
            Assert.Contains($"► House {at:00}", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
            shell.Press("down");
        }
    }

    [Theory]
    [InlineData("w04", "W04")]
    [InlineData("kitchen room", "Kitchen")]
    [InlineData("tail at window", "Tail at window")]
    [InlineData("cut plan", "Cut plan")]
    public void ThePaletteFindsTagsRoomsDetailsAndActions(string typed, string seen)
    {
        using var user = Ridge();
        user.Press(":").Write(typed);
        if (user.Shell.Typing!.Refused is not null || CountOf(user) > 1)
            user.Press("down");
        user.Press("enter").Sees(seen);
        Assert.Null(user.Shell.Typing);
    }

    private static int CountOf(TerminalUser user) =>
        user.Shell.Typing!.Entry.Options.Count(o => Filtering.Fits(o.Shown, user.Shell.Typing.Text));

    [Fact]
    public void AChoiceIsFoundByAnyOfItsWordsAndWalkedThroughFromThere()
    {
        using var user = new TerminalUser(new TestDesk(Clock), new TestJob().Window("W01").Add(ItemKind.CoveringKind, "Wide wood blind")
            .Add(ItemKind.CoveringKind, "Narrow wood blind").Scribe);
        user.Press("enter", "/").Write("kind").Press("enter", "enter").Write("blin").Sees("Wide wood blind, Narrow wood blind: Up and Down choose");
        user.Press("down", "down", "down");
        Assert.Equal("Narrow wood blind", user.Shell.Typing!.Text);
        user.Press("down");
        Assert.NotEqual("Narrow wood blind", user.Shell.Typing!.Text);
        user.Write("wide").Press("enter");
        Assert.Equal("Wide wood blind", user.House.Units[0].Kind!.Name);
    }
}

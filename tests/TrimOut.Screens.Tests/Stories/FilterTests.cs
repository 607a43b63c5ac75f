using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Every list is narrowed as one types, by one key; what hides rows says so, and Esc leaves it as it was.</summary>
public class FilterTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    private static readonly PaperChoice[] Papers =
        [new("binder", "Owner's binder", "the owner"), new("labels", "Labels", "the crew"), new("order", "Order", "the maker")];

    private static TerminalUser Ridge(int width = 80, int height = 24) =>
        new(new TestDesk(Clock) { Papers = Papers }, SampleHouse.Open("ridge-house", Clock), width, height);

    public static TheoryData<string, string> Lists() => new()
    {
        { "", "w03" }, { "r", "w03" }, { "3", "w03" }, { "4", "w03" }, { "5", "w03" }, { "6", "w03" }, { "7", "binder" }, { "8", "w03" }, { "9", "blank" },
        { "0", "meter" },
    };

    [Theory]
    [MemberData(nameof(Lists))]
    public void AListShowsLessWithEachLetterAndAllAgainWithEsc(string screen, string typed)
    {
        using var user = Ridge();
        if (screen.Length > 0)
            user.Press(screen);
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
        if (screen == "0")
            return;
        using var user = Ridge();
        if (screen.Length > 0)
            user.Press(screen);
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
        using var user = Ridge();
        if (screen.Length > 0)
            user.Press(screen);
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

    [Fact]
    public void EveryScreenWithAListHasTheKey()
    {
        string[] noLongList = ["Walk", "Keys", "A paper that is looked at", "Before you begin", "Open elsewhere", "What if", "Workings", "Houses",
            "Sheet in hand", "From the kit folder", "Kit folder", "Cut plan", "As it stood", "Other copies", "What would come in", "In conflict"];
        Assert.All(KeyTableTests.EveryScreen().Where(s => s.Keys.Any(k => k.Strokes.Contains("pagedown"))), screen =>
            Assert.True(screen is IFiltered && screen.Keys.Any(k => k.Strokes.Contains("/")) || noLongList.Contains(KeysPageTests.Name(screen)),
                KeysPageTests.Name(screen)));
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

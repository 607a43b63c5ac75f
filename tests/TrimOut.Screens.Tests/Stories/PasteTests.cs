using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>What is pasted is taken whole, or it is said what was not: no line of it is gone without a word.</summary>
public class PasteTests
{
    /// <summary>Four lines of a message, 1,239 characters without their ends.</summary>
    private static readonly string[] Message = [.. Enumerable.Range(1, 4).Select(n => $"Line {n}: " + new string((char)('a' + n), 300) + ".")];

    private static TerminalUser AtTheNote()
    {
        var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        user.Press("enter", "/").Write("note");
        while (user.Shell.Screen is Sheets.SheetScreen { Current: { } row } && row.Fact != UnitFacts.Note)
            user.Press("down");
        return user.Press("enter");
    }

    private static string? NoteOf(TerminalUser user) => user.House.Units[0].Item.Get(UnitFacts.Note);

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void ANoteOfSeveralLinesIsTakenWholeAndItsLineBreaksAreSpokenOf(string end)
    {
        using var user = AtTheNote();
        user.Press("enter").Paste(string.Join(end, Message) + end).Sees("3 line breaks of what was pasted became spaces.").Press("enter");
        Assert.Equal(string.Join(' ', Message), NoteOf(user));
    }

    [Fact]
    public void APasteGoesWhereTheCursorIsAndTypingGoesOnBehindIt()
    {
        using var user = AtTheNote();
        user.Press("enter").Write("ad").Press("left").Paste("b").Press("c", "enter");
        Assert.Equal("abcd", NoteOf(user));
    }

    [Fact]
    public void APasteTakesThePlaceOfWhatIsSelectedAndOfNothingElse()
    {
        using var user = AtTheNote();
        user.Press("enter").Type("what stood here").Press("enter").Paste("new").Press("!", "enter");
        Assert.Equal("new!", NoteOf(user));
    }

    [Fact]
    public void WhatIsTooLongForADetailStaysToBeShortened()
    {
        using var user = AtTheNote();
        var long_ = new string('n', 2_300);
        user.Press("enter").Paste(long_).Press("enter").Sees("2000 characters at the most, and it has 2300");
        Assert.Equal(long_, user.Shell.Typing!.Text);
        Assert.Null(NoteOf(user));
    }

    [Fact]
    public void WhatNoFieldTakesIsCountedAndWhatItTookIsNotReplacedByTheNextKey()
    {
        using var user = AtTheNote();
        user.Press("enter").Paste(new string('n', ShellState.MostTyped + 7)).Sees("The 7 after them are left out.").Press("x");
        Assert.Equal(new string('n', ShellState.MostTyped), user.Shell.Typing!.Text);
    }

    [Fact]
    public void WhereNoFieldIsOpenItIsSaidAndNoLetterOfItIsAKey()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        user.Paste("qqX9\nxx").Sees("Nothing took the 7 characters that you pasted");
        Assert.False(user.Shell.Left);
        Assert.IsType<JobSheet.JobSheetScreen>(user.Shell.Screen);
    }

    [Fact]
    public void AReasonThatIsTooLongIsNotCalledMissing()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()),
            new TestJob().Window("W01").Say("W01", UnitFacts.BoxLabel, "W09").Scribe);
        var reason = new string('r', 2_001);
        user.Press("6", "a").Paste(reason).Press("enter").Sees("2000 characters at the most, and it has 2001");
        Assert.Equal(reason, user.Shell.Typing!.Text);
        Assert.DoesNotContain(user.House.Items.Values, i => i.Kind == Core.Houses.ItemKind.Waiver);
    }
}

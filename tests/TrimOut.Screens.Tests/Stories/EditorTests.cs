using Microsoft.Extensions.Time.Testing;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A note is opened in the user's own editor; here the editor is a function, in the tours a program.</summary>
public class EditorTests
{
    private readonly TestJob _job = new TestJob().Window("W01").Say("W01", UnitFacts.Note, "before");

    private ShellState AtNote()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), _job.Scribe);
        shell.Press("enter");
        shell.Press("end");
        for (var up = 0; up < 20 && ((SheetScreen)shell.Screen).Current!.Fact != UnitFacts.Note; up++)
            shell.Press("up");
        Assert.Equal(UnitFacts.Note, ((SheetScreen)shell.Screen).Current!.Fact);
        return shell;
    }

    private string? Note => _job.Unit("W01").Item.Get(UnitFacts.Note);

    [Fact]
    public void WhatTheEditorLeavesIsSavedAsOneLine()
    {
        var shell = AtNote();
        shell.Press("E");
        Assert.Equal("before", shell.Outside);
        shell.CameBack("two lines\nof a note\n");
        Assert.Null(shell.Outside);
        Assert.Equal("two lines of a note", Note);
        Assert.Contains("Saved: ", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void AnEditorThatFailsSaysSoAndChangesNothing()
    {
        var shell = AtNote();
        shell.Press("E");
        shell.CameBack(new Refusal("The editor ended with 1: nothing was changed."));
        Assert.Equal("before", Note);
        Assert.Contains("ended with 1", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
        Assert.Null(shell.Outside);
    }

    [Fact]
    public void WhatIsTooLongStandsInTheFieldToBeFixed()
    {
        var shell = AtNote();
        shell.Press("E");
        shell.CameBack(new string('x', 2_600));
        Assert.Equal("before", Note);
        Assert.Equal(new string('x', 2_600), shell.Typing!.Text);
        shell.TextChanged("shorter");
        shell.Press("enter");
        Assert.Equal("shorter", Note);
    }

    [Fact]
    public void ATextThatWasLeftAsItWasMakesNoChange()
    {
        var shell = AtNote();
        var before = _job.Scribe.Log.Changes.Count;
        shell.Press("E");
        shell.CameBack("before");
        Assert.Equal(before, _job.Scribe.Log.Changes.Count);
    }

    [Fact]
    public void OnlyWordsAreOpenedInAnEditor()
    {
        var shell = AtNote();
        while (((SheetScreen)shell.Screen).Current!.Fact != UnitFacts.LeadSide)
            shell.Press("up");
        shell.Press("E");
        Assert.Null(shell.Outside);
        Assert.Contains("Only a note", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
    }
}

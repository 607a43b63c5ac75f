using Microsoft.Extensions.Time.Testing;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Papers;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Papers are made beside the keys: here the work lies in a list until the test lets it run.</summary>
public class PapersTests
{
    private readonly List<Action> _waiting = [];
    private readonly TestDesk _desk = new(new FakeTimeProvider())
    { Papers = [new("binder", "Owner's binder", "the owner"), new("labels", "Cable labels", "the crew")] };

    [Fact]
    public void WhileAPaperIsWrittenTheKeysGoOn()
    {
        var shell = AtPapers();
        shell.Press("w");
        Assert.Equal("Writing Owner's binder. Esc stops it.", Message(shell));
        Assert.True(shell.Ticks);
        shell.Press("down");
        Assert.Equal(1, ((PapersScreen)shell.Screen).Selected);
        Assert.Empty(_desk.Written);
        Finish();
        shell.Tick();
        Assert.Equal("Written: binder.html, binder.md", Message(shell));
        Assert.False(shell.Ticks);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void OneKeyWritesThePaperAsPdfToo(bool looked)
    {
        var shell = AtPapers();
        if (looked)
        {
            shell.Press("enter");
            Finish();
            shell.Tick();
            Assert.IsType<PreviewScreen>(shell.Screen);
        }
        shell.Press("A");
        Finish();
        shell.Tick();
        Assert.Equal(["binder"], _desk.Printed);
        Assert.Equal("Written: binder.pdf, binder.html, binder.md", Message(shell));
        shell.Press("w");
        Finish();
        Assert.Equal(["binder"], _desk.Printed);
    }

    [Fact]
    public void TheSheetOfLabelsIsChosenAndStandsBesideThePaperThatIsPrintedOnIt()
    {
        _desk.Papers = [_desk.Papers[0], _desk.Papers[1] with { OnLabels = true }];
        var shell = AtPapers();
        string Seen() => string.Join(' ', shell.Draw(80, 24).ToText().Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.DoesNotContain("G chooses", Seen(), StringComparison.Ordinal);
        shell.Press("down");
        Assert.Contains("On plain paper, to be cut; G chooses another sheet.", Seen(), StringComparison.Ordinal);
        shell.Press("G");
        shell.TextChanged("3x");
        shell.Press("enter");
        Assert.Contains("\"3x\" is no sheet of labels.", Seen(), StringComparison.Ordinal);
        shell.TextChanged("8x3,a4");
        shell.Press("enter");
        Assert.Equal("8x3,a4", _desk.LabelSheet);
        Assert.Contains("On sheets of 8x3,a4; G chooses another sheet.", Seen(), StringComparison.Ordinal);
        shell.Press("G");
        shell.Press("down");
        shell.TextChanged("plain");
        shell.Press("enter");
        Assert.Null(_desk.LabelSheet);
    }

    [Fact]
    public void WhatTrimOutDidNotWriteIsAskedAboutBeforeItIsWrittenOver()
    {
        _desk.Others.AddRange(["binder.md", "binder.html"]);
        var shell = AtPapers();
        shell.Press("w");
        Finish();
        shell.Tick();
        var asked = string.Concat(Enumerable.Range(26, 3).SelectMany(y => shell.Draw(100, 30).Row(y).ToArray()).Select(c => c.Text));
        Assert.Contains("binder.md and 1 more file are not as TrimOut wrote them.", asked, StringComparison.Ordinal);
        shell.Press("x");
        Assert.Empty(_desk.Written);
        shell.Press("w");
        Finish();
        shell.Tick();
        shell.Press("w");
        Finish();
        shell.Tick();
        Assert.Equal(["binder"], _desk.Written);
        Assert.StartsWith("Written: ", Message(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void AllPapersSayHowFarTheyAre()
    {
        var shell = AtPapers();
        var seen = new List<string>();
        _desk.Before = _ => seen.Add(shell.Doing!);
        shell.Press("W");
        Finish();
        shell.Tick();
        Assert.Equal(["Writing all papers: binder", "Writing all papers: labels"], seen);
        Assert.StartsWith("Written: 2 papers in 4 files", Message(shell), StringComparison.Ordinal);
    }

    [Fact]
    public void EscStopsBetweenTwoPapersAndGoesNoStepBack()
    {
        var shell = AtPapers();
        shell.Press("W");
        _desk.Before = stop =>
        {
            if (_desk.Written.Count == 1)
                shell.Press("esc");
            stop.ThrowIfCancellationRequested();
        };
        Finish();
        Assert.IsType<PapersScreen>(shell.Screen);
        shell.Tick();
        Assert.Equal(["binder"], _desk.Written);
        Assert.Equal("! Writing all papers: stopped.", Message(shell));
        shell.Press("esc");
        Assert.IsType<JobSheetScreen>(shell.Screen);
    }

    [Fact]
    public void AnotherPaperWaitsUntilTheFirstIsThrough()
    {
        var shell = AtPapers();
        shell.Press("w");
        shell.Press("enter");
        Assert.Equal("! Writing Owner's binder. Esc stops it, or wait until it is through.", Message(shell));
        Assert.Single(_waiting);
    }

    [Fact]
    public void SomebodyWhoWentOnIsNotTakenBackToThePaper()
    {
        var shell = AtPapers();
        shell.Press("enter");
        shell.Press("1");
        var on = shell.Screen.GetType();
        Finish();
        shell.Tick();
        Assert.Equal(on, shell.Screen.GetType());
    }

    [Fact]
    public void WhoIsTypingIsNotDisturbed()
    {
        var shell = AtPapers();
        shell.Press("enter");
        shell.Press("q");
        Finish();
        shell.Tick();
        Assert.IsType<PapersScreen>(shell.Screen);
        shell.Press("x");
        shell.Tick();
        Assert.IsType<PreviewScreen>(shell.Screen);
    }

    [Fact]
    public void AFaultInAPaperIsThrownWhereTheKeysAreSoThatItIsNoted()
    {
        var shell = AtPapers();
        _desk.Before = _ => throw new InvalidOperationException("a fault of our own");
        shell.Press("w");
        Finish();
        Assert.Equal("a fault of our own", Assert.Throws<InvalidOperationException>(shell.Tick).Message);
    }

    private ShellState AtPapers()
    {
        var shell = new ShellState(_desk, new TestJob().Window("W01").Scribe, beside: _waiting.Add);
        shell.Press("7");
        return shell;
    }

    private void Finish()
    {
        foreach (var work in _waiting)
            work();
        _waiting.Clear();
    }

    private static string Message(ShellState shell)
    {
        var frame = shell.Draw(100, 30);
        return string.Concat(frame.Row(28).ToArray().Select(c => c.Text)).Trim();
    }
}

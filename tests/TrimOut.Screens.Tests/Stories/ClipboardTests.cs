using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>The tag, what is wrong or the whole list goes to the clipboard; the window of the terminal has the house's name.</summary>
public class ClipboardTests
{
    private readonly TestJob _job = new TestJob().Window("W01").Window("W02").Say("W02", UnitFacts.BoxLabel, "W09");

    private ShellState Shell(bool canCopy = true) => new(new TestDesk(new FakeTimeProvider()), _job.Scribe) { CanCopy = canCopy };

    private static ShellState Copy(ShellState shell, string what, params string[] keys)
    {
        foreach (var key in (string[])[.. keys, "Y"])
            shell.Press(key);
        shell.TextChanged(what);
        shell.Press("enter");
        return shell;
    }

    [Fact]
    public void TheTagOfTheUnitUnderTheCursorIsCopiedByTwoKeys()
    {
        var shell = Shell();
        foreach (var key in (string[])["down", "Y", "enter"])
            shell.Press(key);
        Assert.Equal("W02", shell.TakeCopied());
        Assert.Null(shell.TakeCopied());
        Assert.Contains("clipboard: W02", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void TheFindingThatIsChosenOnThePunchListIsCopied() =>
        Assert.Matches("^W02: .*W09", Copy(Shell(), "finding", "6").TakeCopied()!);

    [Fact]
    public void TheWorstFindingOfTheUnitIsCopiedElsewhere() => Assert.Matches("^W02: .*W09", Copy(Shell(), "f", "down").TakeCopied()!);

    [Fact]
    public void TheListIsCopiedWithTabsAndRowsBeyondTheEdge()
    {
        for (var n = 3; n <= 60; n++)
            _job.Window($"W{n:00}");
        var lines = Copy(Shell(), "table").TakeCopied()!.TrimEnd().Split('\n');
        Assert.Equal(61, lines.Length);
        Assert.StartsWith("Unit\tKind\tRoom\t", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("W60\tRoller\tKitchen\t", lines[^1], StringComparison.Ordinal);
        Assert.All(lines, l => Assert.Equal(lines[0].Split('\t').Length, l.Split('\t').Length));
    }

    [Theory]
    [InlineData("3")]
    [InlineData("4")]
    [InlineData("5")]
    [InlineData("8")]
    [InlineData("9")]
    [InlineData("0")]
    [InlineData("P")]
    public void EveryListIsCopied(string section)
    {
        _job.Add(Core.Houses.ItemKind.Panel, "P1").Add(Core.Houses.ItemKind.Remote, "R1");
        Assert.NotEmpty(Copy(Shell(), "table", section).TakeCopied()!);
    }

    [Fact]
    public void WhatIsTooLongForAClipboardIsNotCopiedInPart()
    {
        for (var n = 3; n <= 60; n++)
            _job.Window($"W{n:00}");
        for (var n = 0; n < 1500; n++)
            _job.Say("W01", UnitFacts.Note, $"{new string('n', 60)}{n}");
        var shell = Copy(Shell(), "table", "8");
        Assert.Null(shell.TakeCopied());
        Assert.Contains("terminals take 74994", shell.Draw(120, 30).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void ATerminalThatTakesNoWordsIsNotTold()
    {
        var shell = Copy(Shell(canCopy: false), "tag");
        Assert.Null(shell.TakeCopied());
        Assert.Contains("no clipboard", shell.Draw(100, 30).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void TheWindowOfTheTerminalIsNamedAfterTheHouseAndTheUnitThatIsOpen()
    {
        var shell = Shell();
        var house = shell.Context.House.Name;
        Assert.Equal($"{house} - TrimOut", shell.TerminalTitle);
        shell.Press("down");
        Assert.Equal($"{house} - TrimOut", shell.TerminalTitle);
        shell.Press("enter");
        Assert.Equal($"W02, {house} - TrimOut", shell.TerminalTitle);
        foreach (var key in (string[])["esc", "esc", "y"])
            shell.Press(key);
        Assert.Equal("TrimOut", shell.TerminalTitle);
    }
}

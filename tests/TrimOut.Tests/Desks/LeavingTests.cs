using TrimOut.Core.Facts;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Tests.Desks;

/// <summary>The folder of a house is gone while it is open: leaving says so, and all of the house is written where there is room for it.</summary>
public sealed class LeavingTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-leaving-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private (Desk Desk, ShellState Shell) Open()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "site"));
        var file = Path.Combine(_folder, "site", "elm.trimout");
        HouseOnDisk.Create(file, TimeProvider.System, new TestJob().Window("W01").Scribe.Log.Changes).Dispose();
        var desk = new Desk("Ash");
        return (desk, new ShellState(desk, desk.Open(file).Value));
    }

    private static string Seen(ShellState shell) =>
        string.Join(' ', shell.Draw(100, 30).ToText().Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private void Lose(string how)
    {
        var site = Path.Combine(_folder, "site");
        if (how == "removed")
            Directory.Delete(site, recursive: true);
        else
            Directory.Move(site, Path.Combine(_folder, "elsewhere"));
    }

    [Theory]
    [InlineData("removed", "q")]
    [InlineData("removed", "esc")]
    [InlineData("moved", "q")]
    [InlineData("moved", "esc")]
    public void LeavingSaysThatItIsNotSavedAndF2WritesAllOfItElsewhere(string how, string leave)
    {
        if (OperatingSystem.IsWindows())
            return;
        var (desk, shell) = Open();
        var changes = shell.Context.Log.Changes.Count;
        Lose(how);
        shell.Press(leave);
        Assert.Contains("NOT SAVED. F2 writes all elsewhere,", Seen(shell), StringComparison.Ordinal);
        Assert.DoesNotContain("All is saved", Seen(shell), StringComparison.Ordinal);
        shell.Press("f2");
        var there = Path.Combine(_folder, "copy.trimout");
        shell.TextChanged(there);
        shell.Press("enter");
        Assert.Contains("Written to", Seen(shell), StringComparison.Ordinal);
        shell.Press(leave);
        Assert.Contains("All is saved", Seen(shell), StringComparison.Ordinal);
        shell.Press("y");
        if (shell.Open is { } open)
            desk.Close(open);
        Assert.Empty(desk.Unsaved);
        using var written = HouseOnDisk.Open(there, TimeProvider.System);
        Assert.Equal(changes, written.Opened.Count);
    }

    [Fact]
    public void WhatIsTypedAfterTheFolderIsGoneGoesOnInTheNewFile()
    {
        if (OperatingSystem.IsWindows())
            return;
        var (desk, shell) = Open();
        Lose("removed");
        foreach (var key in (string[])["enter", "enter"])
            shell.Press(key);
        shell.TextChanged("W77");
        shell.Press("enter");
        Assert.Contains("F2 writes all to a new file", Seen(shell), StringComparison.Ordinal);
        Assert.Equal("W77", shell.Typing!.Text);
        shell.Press("f2");
        var there = Path.Combine(_folder, "copy.trimout");
        shell.TextChanged(there);
        shell.Press("enter");
        shell.Press("enter");
        Assert.Equal("W77", shell.Context.House.Units[0].Tag);
        desk.Close(shell.Open!);
        Assert.Empty(desk.Unsaved);
        using var written = HouseOnDisk.Open(there, TimeProvider.System);
        Assert.Equal("W77", new Core.History.Scribe(written, TimeProvider.System, "Ash").House.Windows[0].Item.Get(WindowFacts.Tag));
    }

    [Fact]
    public void WhoLeavesAllTheSameIsToldAgainWhenTheScreensAreGone()
    {
        if (OperatingSystem.IsWindows())
            return;
        var (desk, shell) = Open();
        Lose("removed");
        shell.Press("q");
        shell.Press("q");
        Assert.True(shell.Left);
        desk.Close(shell.Open!);
        Assert.Contains("elm.trimout", Assert.Single(desk.Unsaved), StringComparison.Ordinal);
    }
}

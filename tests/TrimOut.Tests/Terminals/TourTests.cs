using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Tests.Terminals;

/// <summary>Tours through the real program in a real pseudo-terminal. They need util-linux's <c>script</c>, which Debian always has.</summary>
public sealed class TourTests : IDisposable
{
    private const string LeftTheScreen = "\u001b[?1049l";
    private static readonly string Ridge = Path.Combine(Repository.Root, "sample-jobs", "ridge-house");

    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-tour-").FullName;

    [LinuxFact]
    public void StartWalkResizeQuitAndTheTerminalIsAsItWas()
    {
        using var terminal = new PseudoTerminal(_folder, 140, 40, "LANG=C.UTF-8 TERM=xterm-256color", "open", Ridge, "--by", "Ash");
        terminal.WaitFor("Living room");
        terminal.Send("2").WaitFor("Walk: ");
        terminal.Forget().Resize(80, 24);
        terminal.WaitFor("Walk: ");
        terminal.Send("1").WaitFor("Job sheet");
        terminal.Forget().Resize(140, 40);
        terminal.WaitFor("Living room");
        terminal.Forget().Send("\u001bp").WaitFor("Alt+p does nothing here");
        terminal.Forget().Send("\u001bOP").WaitFor("F1 does nothing here");
        terminal.Send("q").WaitFor("All is saved");
        terminal.Send("q");
        Assert.Equal(0, terminal.WaitForExit());
        Assert.Contains(LeftTheScreen, terminal.Seen, StringComparison.Ordinal);
        Assert.Equal(terminal.Note("before"), terminal.Note("after"));
    }

    [LinuxFact]
    public void WhoeverStartsForTheFirstTimeIsAskedOnceAndCtrlLDrawsAllAgain()
    {
        using (var first = new PseudoTerminal(_folder, 80, 24, "LANG=C.UTF-8 TERM=xterm", "open", Ridge))
        {
            first.WaitFor("Who is working here").Send("\u0015Ash Example\r").WaitFor("said to be by Ash Example");
            first.Forget().Send("\u000c").WaitFor("Living room");
            first.Send("qq");
            Assert.Equal(0, first.WaitForExit());
        }
        using var second = new PseudoTerminal(_folder, 80, 24, "LANG=C.UTF-8 TERM=xterm", "open", Ridge);
        second.WaitFor("Living room");
        Assert.DoesNotContain("Who is working here", second.Seen, StringComparison.Ordinal);
        second.Send("qq");
        Assert.Equal(0, second.WaitForExit());
    }

    [LinuxFact]
    public void TheWindowIsNamedClicksAreTakenAndAllOfItIsGivenBack()
    {
        using var terminal = new PseudoTerminal(_folder, 80, 24, "LANG=C.UTF-8 TERM=xterm-256color", "open", Ridge, "--by", "Ash");
        terminal.WaitFor("Living room").WaitFor("checks wait").WaitFor("\u001b]2;Ridge house - TrimOut\a").WaitFor("\u001b[?1000h\u001b[?1006h");
        // Pressed and let go on a row, whose line is counted from 1 by terminals.
        var screen = new ShellState(new Desk("Ash"), SampleHouse.Open("ridge-house", TimeProvider.System)).Draw(80, 24).ToText().Split('\n');
        var row = 1 + Array.FindIndex(screen, l => l.Contains(" W02 ", StringComparison.Ordinal));
        terminal.Send($"\u001b[<0;4;{row}M\u001b[<0;4;{row}m");
        Thread.Sleep(700);
        Assert.DoesNotContain("\u001b]0;", terminal.Seen, StringComparison.Ordinal);
        terminal.Forget().Send($"\u001b[<0;4;{row}M\u001b[<0;4;{row}m").WaitFor("W02, Living room").WaitFor("\u001b]2;W02, Ridge house - TrimOut\a");
        terminal.Forget().Send("Y\r").WaitFor("\u001b]52;c;VzAy\a");
        terminal.Forget().Send("\u001bOS").WaitFor("\u001b[?1000l");
        terminal.Send("qq");
        Assert.Equal(0, terminal.WaitForExit());
        Assert.Contains("\u001b]2;\a\u001b[23;2t", terminal.Seen, StringComparison.Ordinal);
        Assert.Equal(terminal.Note("before"), terminal.Note("after"));
    }

    [LinuxFact]
    public void WhatIsCopiedInAFieldGoesToTheTerminalAndCanBePastedInAnotherOne()
    {
        using var terminal = new PseudoTerminal(_folder, 80, 24, "LANG=C.UTF-8 TERM=xterm-256color", "open", Ridge, "--by", "Ash");
        terminal.WaitFor("Living room");
        terminal.Send("0").WaitFor("Client").Send("\r").WaitFor("take it");
        terminal.Send("North\u0001\u0003").WaitFor($"\u001b]52;c;{Convert.ToBase64String("North"u8)}\a");
        terminal.Send("\u001b").Send("\u001b[B\r").WaitFor("take it").Forget().Send("\u0016\r").WaitFor("Saved: ").WaitFor("North");
        terminal.Send("qq");
        Assert.Equal(0, terminal.WaitForExit());
    }

    [LinuxFact]
    public void ANoteIsEditedInTheUsersOwnEditorAndTheScreenComesBackWhole()
    {
        var editor = Path.Combine(_folder, "editor.sh");
        File.WriteAllText(editor, "#!/bin/sh\nstty -g > editing\necho EDITOR HAS IT\nread line\necho \"$line\" > \"$1\"\n");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(editor, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        using var terminal = new PseudoTerminal(_folder, 80, 24, $"LANG=C.UTF-8 TERM=xterm EDITOR={editor}", "open", Ridge, "--by", "Ash");
        terminal.WaitFor("Living room");
        terminal.Send("\r").WaitFor("W01, Living room").Send("\u001b[F").WaitFor("Note");
        terminal.Forget().Send("E").WaitFor("EDITOR HAS IT");
        Assert.Contains(LeftTheScreen, terminal.Seen, StringComparison.Ordinal);
        Assert.Equal(terminal.Note("before"), terminal.Note("editing"));
        terminal.Forget().Send("a note from the editor\n").WaitFor("Saved: ").WaitFor("a note from the editor").WaitFor("W01, Living room");
        terminal.Send("qq");
        Assert.Equal(0, terminal.WaitForExit());
        Assert.Equal(terminal.Note("before"), terminal.Note("after"));
    }

    [LinuxTheory]
    [InlineData("TERM")]
    [InlineData("INT")]
    [InlineData("QUIT")]
    public void ASignalEndsItWellAndTheHouseIsSaved(string signal)
    {
        using var terminal = new PseudoTerminal(_folder, 80, 24, "LANG=C.UTF-8 TERM=xterm", "open", Ridge, "--by", "Ash");
        terminal.WaitFor("Living room");
        terminal.Send("0").WaitFor("Client").Send("\r").WaitFor("take it");
        terminal.Send("Ridge house again\r").WaitFor("Saved: ");
        terminal.Signal(signal);
        terminal.WaitForExit();
        Assert.Contains(LeftTheScreen, terminal.Seen, StringComparison.Ordinal);
        Assert.Equal(terminal.Note("before"), terminal.Note("after"));
        using var house = HouseOnDisk.Open(Path.Combine(_folder, "data", "trimout", "houses", "ridge-house.trimout"), TimeProvider.System);
        Assert.Equal("Ridge house again", new Core.History.Scribe(house, TimeProvider.System, "test").House.Name);
    }

    [LinuxFact]
    public void AClosedTerminalEndsItAndTheHouseIsSaved()
    {
        using var terminal = new PseudoTerminal(_folder, 80, 24, "LANG=C.UTF-8 TERM=xterm", "open", Ridge, "--by", "Ash");
        terminal.WaitFor("Living room");
        terminal.Send("0").WaitFor("Client").Send("\r").WaitFor("take it");
        terminal.Send("Ridge house again\r").WaitFor("Saved: ");
        terminal.Close();
        var clock = System.Diagnostics.Stopwatch.StartNew();
        while (!terminal.Gone && clock.Elapsed < TimeSpan.FromSeconds(30))
            Thread.Sleep(50);
        Assert.True(terminal.Gone, "It goes on without a terminal.");
        using var house = HouseOnDisk.Open(Path.Combine(_folder, "data", "trimout", "houses", "ridge-house.trimout"), TimeProvider.System);
        Assert.Equal("Ridge house again", new Core.History.Scribe(house, TimeProvider.System, "test").House.Name);
    }

    [LinuxTheory]
    [InlineData("LANG=C.UTF-8 TERM=xterm-256color", "38;5;")]
    [InlineData("LANG=C.UTF-8 TERM=linux", "Living room")]
    [InlineData("LANG=C.UTF-8 TERM=screen", ";97;")]
    [InlineData("LANG=C.UTF-8 TERM=tmux-256color", "38;5;")]
    [InlineData("LANG=POSIX TERM=xterm", "|")]
    [InlineData("LANG=C.UTF-8 TERM=xterm-256color NO_COLOR=1", "Living room")]
    public void ItShowsOnTerminalsOfManySorts(string environment, string seen)
    {
        using var terminal = new PseudoTerminal(_folder, 80, 24, environment, "open", Ridge, "--by", "Ash");
        terminal.WaitFor("Living room").WaitFor(seen);
        if (environment.Contains("NO_COLOR", StringComparison.Ordinal))
            Assert.DoesNotContain("38;5;", terminal.Seen, StringComparison.Ordinal);
        if (environment.Contains("POSIX", StringComparison.Ordinal) || environment.Contains("linux", StringComparison.Ordinal))
            Assert.DoesNotContain("│", terminal.Seen, StringComparison.Ordinal);
        terminal.Send("qq");
        Assert.Equal(0, terminal.WaitForExit());
    }

    [LinuxFact]
    public void ATerminalThatIsTooSmallIsRefusedWithItsSize()
    {
        using var terminal = new PseudoTerminal(_folder, 60, 20, "LANG=C.UTF-8 TERM=xterm", "open", Ridge, "--by", "Ash");
        terminal.WaitFor("this terminal has 60 x 20");
        Assert.Equal(69, terminal.WaitForExit());
        Assert.DoesNotContain('\u001b', terminal.Seen);
        Assert.Equal(terminal.Note("before"), terminal.Note("after"));
    }

    [LinuxTheory]
    [InlineData("new", "elm", 80, 24)]
    [InlineData("check", "none", 80, 24)]
    [InlineData("help", "check", 80, 24)]
    [InlineData("help", "check", 60, 20)]
    [InlineData("help", "papers", 12, 4)]
    [InlineData("set", "none", 80, 24)]
    public void AVerbPutsATerminalIntoNoModeHoweverSmallItIs(string verb, string argument, int width, int height)
    {
        using var terminal = new PseudoTerminal(_folder, width, height, "LANG=C.UTF-8 TERM=xterm", verb, argument);
        var code = terminal.WaitForExit();
        Assert.True(code == 0 || verb != "help" && code is > 63 and not 70, $"{code}: {terminal.Seen}");
        Assert.NotEmpty(terminal.Seen);
        Assert.DoesNotContain('\u001b', terminal.Seen);
        Assert.Equal(terminal.Note("before"), terminal.Note("after"));
    }

    [LinuxFact]
    public void ValuesTypedAtATerminalAreTakenAndNoModeIsLeft()
    {
        using (HouseOnDisk.Create(Path.Combine(_folder, "elm.trimout"), TimeProvider.System))
        {
        }
        using var terminal = new PseudoTerminal(_folder, 80, 24, "LANG=C.UTF-8 TERM=xterm", "set", "elm.trimout");
        terminal.Send("W01\tnote\tx\n").WaitFor("There is no window W01");
        terminal.Send("\u0004");
        Assert.Equal(2, terminal.WaitForExit());
        Assert.DoesNotContain('\u001b', terminal.Seen);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}

/// <summary>A test that needs Linux's pseudo-terminals.</summary>
public sealed class LinuxFactAttribute : FactAttribute
{
    public LinuxFactAttribute() => Skip = OperatingSystem.IsLinux() ? null! : "needs util-linux";
}

/// <summary>A test over several values that needs Linux's pseudo-terminals.</summary>
public sealed class LinuxTheoryAttribute : TheoryAttribute
{
    public LinuxTheoryAttribute() => Skip = OperatingSystem.IsLinux() ? null! : "needs util-linux";
}

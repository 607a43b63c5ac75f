using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Terminal.Gui.Drivers;
using TrimOut.Core.History;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens;

/// <summary>The way from the program into the screens and back.</summary>
public static class OpenScreens
{
    /// <summary>Does what the screens need before they know the house, so that it can go on while the house is read.</summary>
    public static void GetReady() => RuntimeHelpers.RunModuleConstructor(typeof(DriverRegistry).Module.ModuleHandle);

    /// <summary>
    /// Runs the screens until the user leaves, or until the system asks the program to end. The terminal is given back as it was, whatever happens.
    /// </summary>
    /// <param name="desk">What the program does for the screens.</param>
    /// <param name="house">A house to begin with; null begins with the house picker.</param>
    /// <param name="held">A house to begin with that another program has open.</param>
    /// <returns>Null when all went well, or what to say of the fault of the program's own that stopped them.</returns>
    public static string? Run(IDesk desk, Scribe? house, LockedHouse? held = null)
    {
        var depth = TerminalSigns.Colours();
        var words = TerminalSigns.TakesWords();
        var shell = new ShellState(desk, house, depth == ColourDepth.None ? Look.Plain : null, TerminalSigns.Best(), held, work => _ = Task.Run(work))
        {
            CanCopy = words,
        };
        return Guarded(desk, () =>
        {
            try
            {
                Show(shell, depth, words);
                // The terminal is given back whole while another program has it.
                while (shell.Outside is { } text)
                {
                    shell.CameBack(desk.Edit(text));
                    Show(shell, depth, words);
                }
            }
            finally
            {
                if (shell.Open is { } open)
                    desk.Close(open);
            }
        });
    }

    /// <summary>Why the screens can't be shown here; null when they can.</summary>
    public static string? CannotBecause()
    {
        if (Console.IsInputRedirected || Console.IsOutputRedirected)
            return "TrimOut's screens need a terminal, and input or output is not one. Use the other verbs in scripts: trimout --help lists them.";
        var (width, height) = TerminalSize.Now();
        if (width < ShellState.MinimumWidth || height < ShellState.MinimumHeight)
            return $"TrimOut's screens need {ShellState.MinimumWidth} x {ShellState.MinimumHeight} characters; this terminal has {width} x {height}. " +
                "Make it larger and try again.";
        return null;
    }

    /// <summary>Runs something; a fault of the program's own becomes a note on the disk and a sentence for the user.</summary>
    internal static string? Guarded(IDesk desk, Action run)
    {
        try
        {
            run();
            return null;
        }
        catch (Exception fault)
        {
            var note = desk.NoteFault(FaultNote.Of(fault, desk.Clock));
            return "TrimOut stopped by a fault of its own. Every change that the screen called saved is saved."
                + (note is null ? "" : $" What went wrong is noted, without anything about the house, in {note}.");
        }
    }

    /// <summary>How long the library may take to leave a terminal that is gone; it can wait for such a one for ever.</summary>
    private static readonly TimeSpan Grace = TimeSpan.FromSeconds(3);

    private static void Show(ShellState shell, ColourDepth depth, bool words)
    {
        // The checks of a small house take as long as the library does to take over the terminal; those of a large one go on while its units are shown.
        shell.LooksBeforeChecks();
        _ = shell.Context.GetReadyBeside();
        var view = new ShellView(shell, depth, words);
        var gone = false;
        var wait = new KeyWait(() => view.Drawn && !gone);
        var app = wait.App;
        wait.Gone += Gone;
        view.Changed += wait.Wake;
        app.Init(DriverRegistry.Names.ANSI);
        using var asked = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Asked);
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, Asked);
        using var quit = PosixSignalRegistration.Create(PosixSignal.SIGQUIT, Asked);
        using var hungUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, signal =>
        {
            signal.Cancel = true;
            Gone();
        });
        using var resized = OperatingSystem.IsWindows() ? null : PosixSignalRegistration.Create(PosixSignal.SIGWINCH, _ => wait.Wake());
        app.SessionBegun += (_, _) => view.Listen(app);
        try
        {
            app.Run(view);
        }
        finally
        {
            // A terminal that was closed can't be given back.
            if (!gone)
            {
                view.LetGo(app);
                wait.Dispose();
                view.Dispose();
                app.Dispose();
            }
        }

        void Asked(PosixSignalContext signal)
        {
            signal.Cancel = true;
            Leave();
        }

        void Gone()
        {
            if (gone)
                return;
            gone = true;
            new Thread(() => { Thread.Sleep(Grace); Environment.Exit(128 + 1); }) { IsBackground = true }.Start();
            Leave();
        }

        void Leave()
        {
            app.Invoke(() => app.RequestStop(view));
            wait.Wake();
        }
    }
}

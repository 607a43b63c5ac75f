using System.Diagnostics;
using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace TrimOut.Screens.Terminal;

/// <summary>Lets the library's main loop rest until there is something to do.</summary>
/// <remarks>
/// The library's loop sleeps to a fixed beat, and its reader of keys to another: a slow beat answers keys late, a quick
/// one uses up the battery. Here the reader waits in the system and wakes the loop.
/// </remarks>
internal sealed class KeyWait : IDisposable
{
    /// <summary>
    /// After a key the loop goes on for a moment: an escape sequence is not whole at once, and a lone Escape is one only when nothing follows.
    /// </summary>
    private static readonly TimeSpan Lively = TimeSpan.FromMilliseconds(150);
    private static readonly TimeSpan LivelyBeat = TimeSpan.FromMilliseconds(5);

    /// <summary>The longest rest: the library looks after the size of the terminal and its own clocks.</summary>
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(250);

    private readonly AutoResetEvent _heard = new(false);
    private readonly PatientInput? _input;
    private readonly Func<bool> _drawn;
    private long _lastKey = Stopwatch.GetTimestamp();

    /// <summary>Makes the library's application, not begun yet.</summary>
    /// <param name="drawn">Whether there is a screen to rest on.</param>
    /// <param name="over">The library's constructor that takes a reader of keys; its own one where none is given.</param>
    public KeyWait(Func<bool> drawn, Func<IComponentFactory, object>? over = null)
    {
        _drawn = drawn;
        var input = KeysWait.InTheSystem ? new PatientInput(_heard, () => Gone?.Invoke()) : null;
        if (input is not null && Patient(over ?? Over, input) is { } app)
        {
            Application.MaximumIterationsPerSecond = 1000;
            _input = input;
            App = app;
            App.Iteration += (_, _) => Wait();
            return;
        }
        // The library's own way: a console that it shares no waiting for, or a version of it without that constructor. The beat is quick enough for the hand.
        input?.Dispose();
        Application.MaximumIterationsPerSecond = 60;
        App = Application.Create();
    }

    /// <summary>Whether it waits for keys in the system; else the library looks for them in its own way, to its own beat.</summary>
    public bool IsPatient => _input is not null;

    /// <summary>The terminal is gone: not every shell lets the system say so. Raised by the reader of keys.</summary>
    public event Action? Gone;

    /// <summary>The application.</summary>
    public IApplication App { get; }

    /// <summary>Ends a rest at once.</summary>
    public void Wake() => _heard.Set();

    /// <summary>Ends the waiting for keys; after this the application can be disposed of.</summary>
    public void Dispose()
    {
        _input?.LetGo();
        _heard.Set();
    }

    private void Wait()
    {
        // The library never takes this back by itself, and would move the cursor at every beat. Whatever is drawn sets it again.
        App.Driver?.SetCursorNeedsUpdate(false);
        if (!_drawn())
            return;
        if (_heard.WaitOne(Stopwatch.GetElapsedTime(_lastKey) < Lively ? LivelyBeat : Rest))
            _lastKey = Stopwatch.GetTimestamp();
    }

    /// <summary>The application over a reader of ours; null where this version of the library takes none.</summary>
    private static IApplication? Patient(Func<IComponentFactory, object> over, PatientInput input)
    {
        try
        {
            return over(new AnsiComponentFactory(input)) as IApplication;
        }
        catch (Exception changed) when (changed is MissingMemberException or TypeLoadException or FileNotFoundException)
        {
            return null;
        }
    }

    /// <summary>The library takes a reader of its user's only through this constructor, which it keeps for its own tests.</summary>
    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object Over(IComponentFactory factory);
}

using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens.Tests;

/// <summary>Somebody at a headless terminal: presses keys, types, and reads the screen.</summary>
internal sealed class TerminalUser : IDisposable
{
    private readonly IApplication _app;
    private readonly ShellView _view;
    private readonly AutoResetEvent _changed = new(false);
    private DateTime _clicked = new(2026, 3, 2);

    public TerminalUser(IDesk desk, Scribe? scribe = null, int width = 80, int height = 24)
    {
        _app = Application.Create();
        _app.Init(DriverRegistry.Names.ANSI);
        _app.Driver!.SetScreenSize(width, height);
        Shell = new ShellState(desk, scribe, null, Glyphs.Drawn);
        _view = new ShellView(Shell);
        _view.Changed += () => _changed.Set();
        _app.Begin(_view);
        _view.Listen(_app);
        Settle();
    }

    /// <summary>Draws, and again when the checks of a house that was just opened are done.</summary>
    private void Settle()
    {
        _app.LayoutAndDraw();
        if (!_view.ShowsBeforeChecks)
            return;
        FirstSight ??= Screen;
        Assert.True(_changed.WaitOne(TimeSpan.FromSeconds(60)), "The checks never ended.");
        _app.TimedEvents!.RunTimers();
        _app.LayoutAndDraw();
    }

    /// <summary>What stood on the terminal while the checks of the first house went on; null where they were done before anything was drawn.</summary>
    public string? FirstSight { get; private set; }

    public ShellState Shell { get; }

    /// <summary>All keys that were pressed, by the names that they are pressed by here; a typed sign is one.</summary>
    public List<string> Pressed { get; } = [];

    public House House => Shell.Context.House;

    /// <summary>What stands on the terminal.</summary>
    public string Screen => string.Join('\n', _app.Driver!.ToString()!.Split('\n').Select(l => l.TrimEnd()));

    public string Status => Screen.Split('\n')[^2] is { Length: > 0 } line ? line.Trim() : Screen.Split('\n')[^3].Trim();

    public TerminalUser Press(params string[] keys)
    {
        foreach (var key in keys)
        {
            Pressed.Add(key);
            _app.InjectKey(KeyOf(key));
            Settle();
        }
        return this;
    }

    /// <summary>Presses a key that comes as the escape sequence a terminal sends for it.</summary>
    public TerminalUser PressThroughThePipeline(Key key)
    {
        _app.GetInputInjector().InjectKey(key, new InputInjectionOptions { Mode = InputInjectionMode.Pipeline });
        Settle();
        return this;
    }

    /// <summary>Pastes text, as a terminal hands it over between its paste marks.</summary>
    public TerminalUser Paste(string text)
    {
        _app.RaisePasteEvent(text);
        Settle();
        return this;
    }

    /// <summary>Clicks on a text on the screen, where it stands first.</summary>
    /// <param name="text">The text.</param>
    /// <param name="times">How often, quickly.</param>
    public TerminalUser ClickOn(string text, int times = 1)
    {
        var lines = Screen.Split('\n');
        var y = Array.FindIndex(lines, l => l.Contains(text, StringComparison.Ordinal));
        Assert.True(y >= 0, $"\"{text}\" is not on the screen:\n{Screen}");
        return Click(lines[y].IndexOf(text, StringComparison.Ordinal), y, times);
    }

    /// <summary>Clicks at a place: presses and lets go, as a terminal sends it.</summary>
    public TerminalUser Click(int x, int y, int times = 1)
    {
        _clicked += TimeSpan.FromSeconds(5);
        for (var time = 0; time < times; time++)
        {
            Send(x, y, MouseFlags.LeftButtonPressed);
            Send(x, y, MouseFlags.LeftButtonReleased);
        }
        return this;
    }

    /// <summary>Turns the wheel by so many notches; up where there are fewer than none.</summary>
    public TerminalUser Wheel(int notches, int x = 5, int y = 10)
    {
        for (var notch = 0; notch < Math.Abs(notches); notch++)
            Send(x, y, notches > 0 ? MouseFlags.WheeledDown : MouseFlags.WheeledUp);
        return this;
    }

    private void Send(int x, int y, MouseFlags flags)
    {
        _clicked += TimeSpan.FromMilliseconds(20);
        _app.InjectMouse(new Mouse { ScreenPosition = new(x, y), Flags = flags, Timestamp = _clicked });
        Settle();
    }

    /// <summary>Types text into the field that is open, in place of what stands there, and takes it.</summary>
    public TerminalUser Type(string text) => Write(text).Press("enter");

    /// <summary>Types text into the field that is open, in place of what stands there.</summary>
    public TerminalUser Write(string text)
    {
        Assert.True(Shell.Typing is not null, $"Nothing asks for \"{text}\":\n{Screen}");
        Press("end");
        for (var left = Shell.Typing!.Text.Length; left > 0; left--)
            Press("backspace");
        foreach (var rune in text.EnumerateRunes())
        {
            Pressed.Add(rune.ToString());
            _app.InjectKey(new Key(rune.ToString()[0]));
        }
        Settle();
        return this;
    }

    public TerminalUser Sees(string text)
    {
        Assert.True(Screen.Contains(text, StringComparison.Ordinal), $"\"{text}\" is not on the screen:\n{Screen}");
        return this;
    }

    public TerminalUser DoesNotSee(string text)
    {
        Assert.DoesNotContain(text, Screen, StringComparison.Ordinal);
        return this;
    }

    public void Dispose()
    {
        _view.Dispose();
        _app.Dispose();
    }

    private static Key KeyOf(string stroke) => stroke switch
    {
        "enter" => Key.Enter,
        "space" => Key.Space,
        "esc" => Key.Esc,
        "tab" => Key.Tab,
        "backspace" => Key.Backspace,
        "delete" => Key.Delete,
        "home" => Key.Home,
        "end" => Key.End,
        "pageup" => Key.PageUp,
        "pagedown" => Key.PageDown,
        "up" => Key.CursorUp,
        "down" => Key.CursorDown,
        "left" => Key.CursorLeft,
        "right" => Key.CursorRight,
        "f2" => Key.F2,
        "f3" => Key.F3,
        "f4" => Key.F4,
        "f5" => Key.F5,
        _ when stroke.StartsWith("ctrl+", StringComparison.Ordinal) => new Key(stroke[5]).WithCtrl,
        _ => new Key(stroke[0]),
    };
}

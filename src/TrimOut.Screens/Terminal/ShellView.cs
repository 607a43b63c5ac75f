using System.Drawing;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Terminal;

/// <summary>Puts the shell on the terminal: hands it keys, and draws the rows that changed.</summary>
internal sealed class ShellView : Runnable
{
    private readonly ShellState _shell;
    private readonly TextField _field = new() { Visible = false, CanFocus = true, Height = 1 };
    private Frame? _shown;
    private Look? _shownLook;
    private Frame? _next;
    private Slot? _placed;
    private Entry? _entry;
    private bool _syncing;
    private object? _beat;

    public ShellView(ShellState shell)
    {
        _shell = shell;
        CanFocus = true;
        Width = Dim.Fill();
        Height = Dim.Fill();
        _field.TextChanged += (_, _) => Typed();
        Add(_field);
    }

    /// <summary>Whether the first screen is on the terminal.</summary>
    public bool Drawn => _shown is not null;

    /// <summary>Listens to the application's keys before any view does, so that a key means the same everywhere.</summary>
    public void Listen(IApplication app)
    {
        app.Keyboard.KeyDown += (_, key) => key.Handled = Pressed(key) || key.Handled;
        app.ScreenChanged += (_, _) => Refresh(all: true);
        Refresh(all: true);
    }

    protected override bool OnClearingViewport() => true;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (_next is not { } next)
            return true;
        for (var y = 0; y < next.Height; y++)
        {
            if (_shown is null || !next.Row(y).SequenceEqual(_shown.Row(y)))
                DrawRow(next, y);
        }
        _shown = next;
        return true;
    }

    private void DrawRow(Frame frame, int y)
    {
        Move(0, y);
        Tone? tone = null;
        foreach (var cell in frame.Row(y))
        {
            if (cell.Text.Length == 0)
                continue;
            if (cell.Tone != tone)
                SetAttribute(Palette.Of(_shell.Look, cell.Tone));
            tone = cell.Tone;
            AddStr(cell.Text);
        }
    }

    private bool Pressed(Key key)
    {
        if (KeyStrokes.Of(key) is not { } stroke)
            return false;
        if (_shell.Typing is { } typing && !(stroke is "esc" or "enter" or "tab" || (stroke is "up" or "down" && typing.Entry.Options.Count > 0)))
            return false;
        _shell.Press(stroke);
        Refresh();
        return true;
    }

    private void Typed()
    {
        if (_syncing)
            return;
        _shell.TextChanged(_field.Text);
        Refresh();
    }

    private void Refresh(bool all = false)
    {
        if (_shell.Left)
        {
            App?.RequestStop();
            return;
        }
        var screen = App?.Screen.Size ?? new Size(ShellState.MinimumWidth, ShellState.MinimumHeight);
        if (screen.Width <= 0 || screen.Height <= 0)
            return;
        _next = _shell.Draw(screen.Width, screen.Height);
        if (all || _shown?.Width != _next.Width || _shown.Height != _next.Height || _shownLook != _shell.Look)
            _shown = null;
        _shownLook = _shell.Look;
        PlaceField(_next.Slot);
        // The library wipes the whole screen before the next draw when any view was moved.
        if (App?.ClearScreenNextIteration == true)
            _shown = null;
        SetNeedsDraw();
        KeepBeat();
    }

    private void PlaceField(Slot? slot)
    {
        if (_shell.Typing is not { } typing || slot is not { } at)
        {
            if (_field.Visible)
                _shown = null;
            _field.Visible = false;
            SetFocus();
            return;
        }
        _syncing = true;
        if (_field.Text != typing.Text)
        {
            _field.Text = typing.Text;
            _field.MoveEnd();
        }
        _syncing = false;
        var tone = Palette.Of(_shell.Look, Tone.Field);
        _field.SetScheme(new Scheme(tone) { Focus = tone, Editable = tone, Active = Palette.Of(_shell.Look, Tone.Selected) });
        if (_placed != at)
            (_field.X, _field.Y, _field.Width) = (at.X, at.Y, at.Width);
        _placed = at;
        _field.Visible = true;
        _field.SetFocus();
        if (!ReferenceEquals(_entry, typing.Entry))
            Begin(typing);
        _field.SetNeedsDraw();
    }

    /// <summary>A value that is there already stands selected, so that typing replaces it; a line that was begun goes on at its end.</summary>
    private void Begin(Typing typing)
    {
        _entry = typing.Entry;
        _field.ClearAllSelection();
        if (typing.Text.EndsWith(' '))
            _field.MoveEnd();
        else
            _field.SelectAll();
    }

    /// <summary>A screen that counts is drawn anew by the clock until it stops.</summary>
    private void KeepBeat()
    {
        if (!_shell.Ticks || _beat is not null || App is not { } app)
            return;
        _beat = app.AddTimeout(TimeSpan.FromMilliseconds(200), () =>
        {
            if (!_shell.Ticks)
            {
                _beat = null;
                return false;
            }
            _shell.Tick();
            Refresh();
            return true;
        });
    }
}

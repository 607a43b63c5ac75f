using System.Drawing;
using System.Globalization;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;
using TrimOut.Core;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Terminal;

/// <summary>Puts the shell on the terminal: hands it keys, and draws the rows that changed.</summary>
internal sealed class ShellView : Runnable
{
    private readonly ShellState _shell;
    private readonly ColourDepth _depth;
    private readonly bool _takesWords;
    private readonly TextField _field = new() { Visible = false, CanFocus = true, Height = 1 };
    private Frame? _shown;
    private Look? _shownLook;
    private Frame? _next;
    private Slot? _placed;
    private Entry? _entry;
    private bool _syncing;
    private object? _beat;
    private string? _title;
    private bool? _takesMouse;
    private readonly ScreenContext _first;
    private ScreenContext? _checking;

    /// <summary>A view of a shell.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="depth">The colours of the terminal.</param>
    /// <param name="takesWords">Whether it takes titles and texts for its clipboard.</param>
    public ShellView(ShellState shell, ColourDepth depth = ColourDepth.Many, bool takesWords = false)
    {
        (_shell, _first) = (shell, shell.Context);
        _depth = depth;
        _takesWords = takesWords;
        CanFocus = true;
        // The library would name the terminal's window after a view that has no name, on every terminal, and never take that back.
        Border.Settings &= ~BorderSettings.TerminalTitle;
        Width = Dim.Fill();
        Height = Dim.Fill();
        _field.TextChanged += (_, _) => Typed();
        Add(_field);
    }

    /// <summary>Something is to be drawn that no key asked for. Raised beside the keys.</summary>
    public event Action? Changed;

    /// <summary>Whether the first screen is on the terminal.</summary>
    public bool Drawn => _shown is not null;

    /// <summary>Whether a house is shown whose checks are not done yet.</summary>
    public bool ShowsBeforeChecks { get; private set; }

    /// <summary>Listens to the application's keys before any view does, so that a key means the same everywhere.</summary>
    public void Listen(IApplication app)
    {
        // What is pressed means something only on a house that is checked, and nothing else reads it before.
        app.Keyboard.KeyDown += (_, key) => key.Handled = Checked() && (Pressed(key) || key.Handled);
        app.Mouse.MouseEvent += (_, mouse) => mouse.Handled = Checked() && (Moused(mouse) || mouse.Handled);
        // The library's field would take the first line alone, and the rest would be gone without a word.
        app.Paste += (_, paste) => paste.Handled = Checked() && (PastedLines(paste.Text) || TakePasted(paste.Text));
        app.ScreenChanged += (_, _) => Refresh(all: true);
        // The library wipes the whole screen before the next draw when any view was moved.
        app.Driver!.ClearedContents += (_, _) => _shown = null;
        app.Driver.Clipboard = new FieldClipboard(text =>
        {
            if (_takesWords)
                app.Driver.WriteRaw(TerminalWords.Copy(text));
        });
        if (_takesWords)
            app.Driver.WriteRaw(TerminalWords.KeepTitle);
        Refresh(all: true);
    }

    /// <summary>Gives the title and the mouse back, before the library gives back the rest.</summary>
    public void LetGo(IApplication app) => app.Driver?.WriteRaw(TerminalWords.MouseOff + (_takesWords ? TerminalWords.TitleBack : ""));

    protected override bool OnClearingViewport() => true;

    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (_next is not { } next || App?.Driver is not { } driver)
            return true;
        for (var y = 0; y < next.Height; y++)
        {
            if (_shown is null || next.Slot != _shown.Slot || !next.Row(y).SequenceEqual(_shown.Row(y)))
                KeepInBuffer(driver, next, y);
        }
        if (FrameWriter.Between(_shown, next, _shell.Look, _depth) is { Length: > 0 } text)
            driver.WriteRaw(text);
        _shown = next;
        return true;
    }

    /// <summary>Tells the library what stands in a row, and that it need not write it: it would send a jump for every cell that did not change.</summary>
    private void KeepInBuffer(IDriver driver, Frame frame, int y)
    {
        Move(0, y);
        Tone? tone = null;
        foreach (var cell in frame.Row(y))
        {
            if (cell.Text.Length == 0)
                continue;
            if (cell.Tone != tone)
                SetAttribute(Palette.Of(_shell.Look, cell.Tone).Attribute);
            tone = cell.Tone;
            AddStr(cell.Text);
        }
        var buffer = driver.GetOutputBuffer();
        for (var x = 0; x < Math.Min(frame.Width, buffer.Cols); x++)
        {
            if (frame.Slot is not { } slot || slot.Y != y || x < slot.X || x >= slot.X + slot.Width)
                buffer.Contents![y, x].IsDirty = false;
        }
        buffer.DirtyLines[y] = frame.Slot?.Y == y;
    }

    /// <summary>Waits for the checks that go on beside the keys, if any do.</summary>
    private bool Checked()
    {
        if (_shell.Context == _first || _shell.Context == _checking)
            _shell.Context.GetReady();
        return true;
    }

    private bool Pressed(Key key)
    {
        if (KeyStrokes.Of(key) is not { } stroke)
            return false;
        if (stroke == ShellState.RedrawKey)
        {
            Refresh(all: true);
            return true;
        }
        if (_shell.Typing is { } typing
            && !(stroke is "esc" or "enter" or "tab" or ShellState.ElsewhereKey or ShellState.EmptyKey
            || (stroke is "up" or "down" && (typing.Entry.Options.Count > 0 || typing.Entry.GoesOn))
            || (stroke is "up" or "down" or "pageup" or "pagedown" && typing.Entry.Live is not null)))
            return IsBeyondFull(typing, key);
        _shell.Press(stroke);
        Refresh();
        return true;
    }

    private bool PastedLines(string text)
    {
        var taken = _shell.TakeLines(text);
        if (taken)
            Refresh();
        return taken;
    }

    /// <summary>What the mouse did. In the field that one types in the library puts the cursor; nothing else of it is for the library.</summary>
    private bool Moused(Mouse mouse)
    {
        var (x, y, flags) = (mouse.ScreenPosition.X, mouse.ScreenPosition.Y, mouse.Flags);
        var twice = flags.HasFlag(MouseFlags.LeftButtonDoubleClicked);
        if (flags.HasFlag(MouseFlags.WheeledDown) || flags.HasFlag(MouseFlags.WheeledUp))
            _shell.Wheel(flags.HasFlag(MouseFlags.WheeledDown));
        else if (_shell.IsInField(x, y))
            return false;
        else if (twice || flags.HasFlag(MouseFlags.LeftButtonClicked))
            _shell.Click(x, y, again: twice);
        else
            return true;
        Refresh();
        return true;
    }

    /// <summary>Whether a key is a sign that has no room in a full field: it is said once, and costs nothing after that.</summary>
    private bool IsBeyondFull(Typing typing, Key key)
    {
        if (typing.Text.Length < ShellState.MostTyped || _field.SelectedLength > 0 || key.IsCtrl || key.IsAlt || !key.TryGetPrintableRune(out var sign))
            return false;
        if (typing.Refused is null)
        {
            _shell.TextChanged(typing.Text + sign);
            Refresh();
        }
        return true;
    }

    private void Typed()
    {
        if (_syncing)
            return;
        _shell.TextChanged(_field.Text);
        Refresh();
    }

    /// <summary>Puts pasted text where the cursor is, or in the place of what is selected, as one line and as one change.</summary>
    private bool TakePasted(string text)
    {
        if (_shell.Typing is null || !_field.Visible)
        {
            _shell.PastedNowhere(text);
            Refresh();
            return true;
        }
        var lines = text.Trim('\r', '\n').ReplaceLineEndings("\n");
        var pasted = ShownText.Kept(lines);
        var before = new StringInfo(_field.Text);
        var selected = _field.SelectedLength;
        // The anchor of a selection is at either end of it.
        var from = selected == 0 ? _field.InsertionPoint : Math.Min(_field.SelectedStart, _field.InsertionPoint);
        from = Math.Clamp(from, 0, before.LengthInTextElements);
        var head = from == 0 ? "" : before.SubstringByTextElements(0, from);
        var tail = from + selected >= before.LengthInTextElements ? "" : before.SubstringByTextElements(from + selected);
        _shell.Pasted(head + pasted + tail, lines.Count(c => c == '\n'));
        _syncing = true;
        _field.Text = _shell.Typing.Text;
        _field.ClearAllSelection();
        _field.InsertionPoint = new StringInfo(head + pasted).LengthInTextElements;
        _syncing = false;
        Refresh();
        return true;
    }

    private void Refresh(bool all = false)
    {
        SayToTerminal();
        if (_shell.Left || _shell.Outside is not null)
        {
            App?.RequestStop();
            return;
        }
        var screen = App?.Screen.Size ?? new Size(ShellState.MinimumWidth, ShellState.MinimumHeight);
        if (screen.Width <= 0 || screen.Height <= 0)
            return;
        var before = _shell.DrawBeforeChecks(screen.Width, screen.Height);
        _next = before ?? _shell.Draw(screen.Width, screen.Height);
        ShowsBeforeChecks = before is not null;
        if (ShowsBeforeChecks)
            DrawOnceChecked(_shell.Context);
        if (all || _shown?.Width != _next.Width || _shown.Height != _next.Height || _shownLook != _shell.Look)
            _shown = null;
        _shownLook = _shell.Look;
        PlaceField(_next.Slot);
        SetNeedsDraw();
        KeepBeat();
    }

    /// <summary>Draws anew when the checks are done. A fault in them comes up where the keys are.</summary>
    private void DrawOnceChecked(ScreenContext context)
    {
        if (_checking == context || App is not { } app)
            return;
        _checking = context;
        _ = context.GetReadyBeside().ContinueWith(_ =>
        {
            app.Invoke(() =>
            {
                context.GetReady();
                Refresh();
            });
            Changed?.Invoke();
        }, TaskScheduler.Default);
    }

    /// <summary>What changed besides what stands on the screen.</summary>
    private void SayToTerminal()
    {
        if (App?.Driver is not { } driver)
            return;
        var words = "";
        if (_takesMouse != _shell.TakesMouse)
            words += (_takesMouse = _shell.TakesMouse) == true ? TerminalWords.MouseOn : TerminalWords.MouseOff;
        if (_takesWords && _title != _shell.TerminalTitle)
            words += TerminalWords.Title(_title = _shell.TerminalTitle);
        if (_shell.TakeCopied() is { } copied)
            words += TerminalWords.Copy(copied);
        if (_shell.TakeRing())
            words += TerminalWords.Bell;
        if (words.Length > 0)
            driver.WriteRaw(words);
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
            _entry = null;
        }
        _syncing = false;
        var tone = Palette.Of(_shell.Look, Tone.Field).Attribute;
        _field.SetScheme(new Scheme(tone) { Focus = tone, Editable = tone, Active = Palette.Of(_shell.Look, Tone.Selected).Attribute });
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
        if (typing.Begun || typing.Text.EndsWith(' '))
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

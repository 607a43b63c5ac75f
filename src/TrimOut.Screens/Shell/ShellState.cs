using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Help;
using TrimOut.Screens.HousePicker;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Notices;

namespace TrimOut.Screens.Shell;

/// <summary>Keeps the stack of screens, carries out what they ask, and draws the whole. Knows no terminal.</summary>
internal sealed class ShellState
{
    private readonly IDesk _desk;
    private readonly List<IScreen> _stack;
    private Scribe? _scribe;
    private Ask.Confirm? _confirm;
    private string _status = "";
    private bool _statusIsBad;
    private readonly List<Finding> _raised = [];
    private Entry? _where;
    private Typing? _typedBefore;
    private readonly Action<Action> _beside;
    private SideWork? _work;

    // What may take long runs beside the keys; where no way to do that is given it runs at once.
    public ShellState(IDesk desk, Scribe? scribe, Look? look = null, Glyphs? glyphs = null, HeldHouse? held = null, Action<Action>? beside = null)
    {
        _desk = desk;
        _beside = beside ?? (work => work());
        _scribe = scribe;
        Glyphs = glyphs ?? Glyphs.Drawn;
        Look = look ?? Look.Named(desk.Look);
        Sight = See();
        _stack = [PickerScreen.At(desk)];
        if (scribe is not null)
            Begin();
        else if (held is not null)
            _stack.Add(new HeldScreen(held));
    }

    public Glyphs Glyphs { get; }

    public Look Look { get; private set; }

    public Sight Sight { get; private set; }

    public IScreen Screen => _stack[^1];

    public Typing? Typing { get; private set; }

    public bool Left { get; private set; }

    /// <summary>Whether the last save failed and none has succeeded since.</summary>
    public bool SaveFailed { get; private set; }

    /// <summary>The house that is open; null while the picker is all there is.</summary>
    public Scribe? Open => _scribe;

    /// <summary>Whether the screen changes with the clock alone.</summary>
    public bool Ticks => _work is not null || Screen is ITicking { Ticking: true };

    /// <summary>What goes on beside the keys, in words; null while nothing does.</summary>
    public string? Doing => _work?.Progress;

    /// <summary>Every action that can be used now: the screen's own, then those that every screen has.</summary>
    public IEnumerable<(IKeyAction Action, IScreen On)> Actions => Screen.Keys.Concat(CommonKeys.For(this)).Select(a => (a, Screen));

    /// <summary>The clock went on.</summary>
    public void Tick()
    {
        Sight = See(Sight.Report);
        TakeWork();
    }

    public void Press(string stroke)
    {
        _raised.Clear();
        if (Screen is ITicking)
            Tick();
        Answer(stroke);
        if (_raised.Count > 0)
            Status(Raised(), bad: _raised[0].Check.Severity != Severity.Note);
    }

    private void Answer(string stroke)
    {
        if (_confirm is { } confirm)
        {
            _confirm = null;
            Status("");
            if (stroke == confirm.Yes || stroke == Ask.Confirm.AlsoYes)
                Apply(confirm.OnYes);
            else
                Status("Nothing was done.");
            return;
        }
        if (Typing is not null)
        {
            PressTyping(stroke);
            return;
        }
        Status("");
        if (stroke == "esc" && _work is { } work)
        {
            work.Stop();
            return;
        }
        var action = Actions.Select(a => a.Action).FirstOrDefault(a => a.Strokes.Contains(stroke));
        if (action is null)
            Status($"{KeyNames.Shown(stroke)} does nothing here. ? shows the keys.");
        else if (action.DisabledBecause(Screen, Sight) is { } why)
            Status(why);
        else
            Apply(action.Press(Screen, Sight));
    }

    public void TextChanged(string text)
    {
        if (Typing is { } typing && typing.Text != text)
            Typing = typing with { Text = text, Note = null, Refused = typing.Entry.Echo?.Invoke(text, Sight) is { Ok: false } bad && text.Length > 0 ? bad.Reason : null };
    }

    public Frame Draw(int width, int height)
    {
        var frame = new Frame(width, height);
        if (width < MinimumWidth || height < MinimumHeight)
        {
            frame.All.PutWrapped(0, 0, height, string.Create(CultureInfo.InvariantCulture,
                $"TrimOut needs {MinimumWidth} x {MinimumHeight} characters. This window has {width} x {height}. Make it larger; nothing is lost."), Tone.Strong);
            return frame;
        }
        ShellFrame.Draw(this, frame, _confirm, _status, _statusIsBad);
        if (Glyphs == Glyphs.Ascii)
            frame.Replace("…", "~");
        return frame;
    }

    /// <summary>Works while something is typed too, so that what a full disk refused is not lost.</summary>
    public const string ElsewhereKey = "f2";

    /// <summary>Empties the line that is being typed.</summary>
    public const string EmptyKey = "ctrl+u";

    public const int MinimumWidth = 80;
    public const int MinimumHeight = 24;

    private void PressTyping(string stroke)
    {
        var typing = Typing!;
        switch (stroke)
        {
            case "tab" when typing.Entry.AcceptAndNext is null:
                break;
            case EmptyKey:
                Typing = typing with { Text = "", Refused = null };
                break;
            case "esc":
                (Typing, _typedBefore) = (_typedBefore, null);
                Status("Not changed.");
                break;
            case "enter" or "tab":
                var accept = stroke == "tab" ? typing.Entry.AcceptAndNext ?? typing.Entry.Accept : typing.Entry.Accept;
                var taken = accept(typing.Text, Sight);
                if (!taken.Ok)
                {
                    Typing = typing with { Refused = taken.Reason };
                    return;
                }
                Typing = null;
                if (Apply(taken.Value) is { } refused)
                    Typing = typing with { Refused = refused };
                break;
            case ElsewhereKey when _scribe is not null && typing.Entry != _where:
                AskElsewhere();
                _typedBefore = typing with { Refused = null };
                break;
            case "up" or "down" when typing.Entry.Options.Count > 0:
                var options = typing.Entry.Options;
                var at = options.ToList().FindIndex(o => string.Equals(o.Shown, typing.Text, StringComparison.OrdinalIgnoreCase));
                at = at < 0 ? (stroke == "down" ? 0 : options.Count - 1) : (at + (stroke == "down" ? 1 : options.Count - 1)) % options.Count;
                Typing = typing with { Text = options[at].Shown, Refused = null };
                break;
        }
    }

    /// <summary>Carries out a turn; returns why a change was refused.</summary>
    private string? Apply(Turn turn)
    {
        _stack[^1] = turn.Screen;
        switch (turn.Ask)
        {
            case null:
                return null;
            case Ask.Say say:
                Status(say.Text);
                return null;
            case Ask.Type type:
                Typing = new Typing(type.Entry, type.Entry.Initial, null);
                return null;
            case Ask.Confirm confirm:
                _confirm = confirm;
                return null;
            case Ask.Open open:
                _stack.Add(open.Screen);
                return null;
            case Ask.Back when _stack.Count == 2 && Screen is JobSheetScreen:
                _confirm = new Ask.Confirm($"Close {Sight.House.Name} and go to the list of houses? All is saved. Esc closes it, any other key stays.", "esc", new Turn(Screen, new Ask.BackNow()));
                return null;
            case Ask.Back or Ask.BackNow:
                return Back();
            case Ask.Save save:
                return Save(save);
            case Ask.Beside beside:
                if (_work is not null)
                    return Refuse($"{_work.Progress}. Esc stops it, or wait until it is through.");
                _work = SideWork.Begin(_beside, beside, _desk, Screen);
                return TakeWork();
            case Ask.Enter enter:
                return Enter(enter);
            case Ask.Undo:
                return AskUndo();
            case Ask.Redo:
                return AskRedo();
            case Ask.Carry carry:
                var carried = carry.What(_scribe!);
                return carried.Ok ? Saved(carried.Value) : NotSaved(carried.Reason!);
            case Ask.Elsewhere:
                AskElsewhere();
                return null;
            case Ask.ElsewhereNow elsewhere:
                return Elsewhere(elsewhere.Path);
            case Ask.NextLook:
                Look = Look.Next;
                _desk.Look = Look.Name;
                Status($"Look: {Look.Name}.");
                return null;
            case Ask.Leave:
                _confirm = new Ask.Confirm(_scribe is null ? "Leave TrimOut? q leaves, any other key stays." : "Leave TrimOut? All is saved. q leaves, any other key stays.", "q", new Turn(Screen, new Ask.LeaveNow()));
                return null;
            case Ask.LeaveNow:
                _work?.Dispose();
                Left = true;
                return null;
            case Ask.Help:
                _stack.Add(HelpScreen.For(this));
                return null;
            case Ask.Section section:
                _stack.RemoveRange(2, Math.Max(0, _stack.Count - 2));
                if (section.Make(Sight) is { } other and not JobSheetScreen)
                    _stack.Add(other);
                _stack[^1] = _stack[^1].Fit(Sight);
                return section.Then is { } then ? Do(then) : null;
            case Ask.Action action:
                Status("");
                return Do(action.What);
            default:
                throw new InvalidOperationException($"Nobody carries out {turn.Ask.GetType().Name}.");
        }
    }

    private string? Do(IKeyAction action) => action.DisabledBecause(Screen, Sight) is { } why ? Refuse(why) : Apply(action.Press(Screen, Sight));

    /// <summary>Goes on with what came of the work beside the keys, once it is over and nobody is typing.</summary>
    private string? TakeWork()
    {
        if (_work is not { Ended: true } work || Typing is not null || _confirm is not null)
            return null;
        _work = null;
        using (work)
        {
            var came = work.Came;
            if (!came.Ok)
                return Refuse(came.Reason!);
            // Somebody who went on to another screen meanwhile is not taken away from it.
            return came.Value is Ask.Open && Screen.GetType() != work.AskedOn.GetType() ? null : Apply(new Turn(Screen, came.Value));
        }
    }

    private string? Back()
    {
        if (_stack.Count == 1)
        {
            Status("This is the first screen. q leaves TrimOut.");
            return null;
        }
        _stack.RemoveAt(_stack.Count - 1);
        if (_stack.Count == 1 && _scribe is { } scribe)
        {
            _desk.Close(scribe);
            _scribe = null;
            Sight = See();
            _stack[0] = PickerScreen.At(_desk);
        }
        _stack[^1] = _stack[^1].Fit(Sight);
        return null;
    }

    private string? Save(Ask.Save save)
    {
        if (_scribe is null)
            return Refuse("No house is open.");
        if (!save.Draft.Ok)
            return Refuse(save.Draft.Reason!);
        var saved = _scribe.Record(save.Draft.Value);
        return saved.Ok ? Saved(saved.Value, save.Then) : NotSaved(saved.Reason!);
    }

    /// <summary>What failed may have left the house for reading only.</summary>
    private string NotSaved(string why)
    {
        Sight = See(Sight.Report);
        SaveFailed = true;
        return Refuse($"{why} F2 writes all to a new file and goes on there.");
    }

    private string? Saved(Change change, Func<IScreen, Sight, Turn>? then = null)
    {
        SaveFailed = false;
        var before = Sight.Report.Findings.Where(f => f.Open).Select(f => (f.Check.Id, f.Subject.Id)).ToHashSet();
        Sight = See(Sight.Report);
        _raised.AddRange(Sight.Report.Findings.Where(f => f.Open && !before.Contains((f.Check.Id, f.Subject.Id))));
        _stack[^1] = _stack[^1].Fit(Sight);
        Status($"Saved: {change.What}");
        return then is null ? null : Apply(then(Screen, Sight));
    }

    private string? Enter(Ask.Enter enter)
    {
        var opened = enter.How(_desk);
        if (!opened.Ok && enter.Path is { } path && _desk.CanStillLook)
        {
            _stack.RemoveRange(1, _stack.Count - 1);
            _stack.Add(new HeldScreen(new HeldHouse(path, opened.Reason!)));
            return null;
        }
        if (!opened.Ok)
            return Refuse(opened.Reason!);
        _scribe = opened.Value;
        Sight = See();
        Begin();
        return null;
    }

    /// <summary>Shows the house that was opened, and above it what has to be read first.</summary>
    private void Begin()
    {
        SaveFailed = false;
        _stack.RemoveRange(1, _stack.Count - 1);
        _stack.Add(JobSheetScreen.At(Sight));
        if (_desk.Notices is { Count: > 0 } notices)
            _stack.Add(new NoticeScreen(notices));
        Status(Sight.ReadOnlyBecause is { } why ? $"Opened for reading only: {why}" : $"This house is kept in {Sight.Where}. Every change is saved there at once.");
    }

    private void AskElsewhere()
    {
        _where = new Entry("Write the whole house to", _desk.Elsewhere(_scribe!), "a new file, where you go on; the old one stays as it is",
            (path, _) => path.Trim().Length == 0 ? new Refusal("Type where.") : new Turn(Screen, new Ask.ElsewhereNow(path.Trim())));
        Typing = new Typing(_where, _where.Initial, null);
    }

    /// <summary>Goes on in a new file with all that was saved so far; the old one is left as it is.</summary>
    private string? Elsewhere(string path)
    {
        var written = _desk.WriteElsewhere(_scribe!, path);
        if (!written.Ok)
            return Refuse(written.Reason!);
        _desk.Close(_scribe!);
        _scribe = written.Value;
        SaveFailed = false;
        Sight = See();
        Status($"Written to {Sight.Where}. What you do from now on is saved there.");
        (Typing, _typedBefore) = (_typedBefore is { } before ? before with { Note = $"{_status} Enter saves what you typed." } : null, null);
        return null;
    }

    private string? AskUndo()
    {
        if (Sight.UndoNext is not { } last)
            return Refuse("There is nothing to undo on this laptop.");
        _confirm = new Ask.Confirm($"Undo \"{last.What}\"? u undoes it, any other key leaves it.", "u", new Turn(Screen, new Ask.Carry(s => s.Undo())));
        return null;
    }

    private string? AskRedo()
    {
        if (Sight.RedoNext is not { } undo)
            return Refuse("There is nothing to redo.");
        _confirm = new Ask.Confirm($"Redo what was undone (\"{undo.What}\")? U redoes it, any other key leaves it.", "U", new Turn(Screen, new Ask.Carry(s => s.Redo())));
        return null;
    }

    /// <summary>What was said of the key, and the worst that it brought up: a wrong reading is told while the meter is still on the cable.</summary>
    private string Raised()
    {
        var worst = _raised.MinBy(f => f.Check.Severity)!;
        var more = _raised.Count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $" ({_raised.Count - 1} more: f)");
        return $"{_status} {UnitCard.WordOf(worst.Check.Severity)} {Sight.House.NameOf(worst.Subject)}: {worst.Found.Message}{more}";
    }

    private string Refuse(string why)
    {
        Status(why, bad: true);
        return why;
    }

    private void Status(string text, bool bad = false) => (_status, _statusIsBad) = (text, bad);

    private Sight See(CheckReport? before = null) => new(_scribe, _desk.Papers, _desk.Clock.GetLocalNow(), Glyphs, before);
}

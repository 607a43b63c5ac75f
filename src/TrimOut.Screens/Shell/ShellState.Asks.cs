using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Screens.Copies;
using TrimOut.Screens.Firm;
using TrimOut.Screens.Help;
using TrimOut.Screens.History;
using TrimOut.Screens.HousePicker;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Notices;
using TrimOut.Screens.Walk;

namespace TrimOut.Screens.Shell;

/// <content>What screens ask, carried out.</content>
internal sealed partial class ShellState
{
    // What came in from another copy, as long as nothing was done since: undo is about that first.
    private ImmutableArray<Change>? _taken;

    /// <summary>Carries out a turn; returns why a change was refused.</summary>
    private string? Apply(Transition turn)
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
                Typing = new Typing(type.Entry, ShownText.Kept(type.Entry.Initial), null, type.Entry.Note);
                _before = Screen;
                return null;
            case Ask.Confirm confirm:
                _confirm = confirm;
                return null;
            case Ask.Open open:
                if (open.InPlace)
                    _stack[^1] = open.Screen;
                else
                    _stack.Add(open.Screen);
                return null;
            case Ask.Back when Screen is IFiltered { Filters: true } filtered:
                _stack[^1] = filtered.Unfiltered(Context).Fit(Context);
                Status("All is shown again.");
                return null;
            case Ask.Back when _stack.Count == 2 && Screen is JobSheetScreen:
                _confirm = AskLeaving($"Close {Context.House.Name} and go to the list of houses?", "y closes it", Ask.Confirm.AlsoYes, new Ask.BackNow());
                if (!SaveFailed)
                    _confirm = new Ask.Confirm($"Close {Context.House.Name} and go to the list of houses? y does. All is saved.", Ask.Confirm.AlsoYes,
                        new Transition(Screen, new Ask.BackNow()))
                    { OthersAct = true };
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
            case Ask.AskWho:
                Typing = new Typing(WhoEntry(), ShownText.Kept(_scribe?.By ?? _desk.Who ?? _desk.UsualWho), null);
                return null;
            case Ask.Named named:
                _desk.Who = named.Who;
                if (_scribe is not null)
                    _scribe.By = named.Who;
                Context = See(Context.Report);
                Status($"What is done from now on is said to be by {named.Who}.");
                return null;
            case Ask.Copy copy:
                return Copy(copy);
            case Ask.Edit edit:
                _outside = edit;
                return null;
            case Ask.TakeIn take:
                return TakeIn(take);
            case Ask.SwitchMouse:
                _desk.TakesMouse = !_desk.TakesMouse;
                Status(_desk.TakesMouse
                    ? "Clicks choose and open, and the wheel goes through lists. F4 leaves the mouse to the terminal."
                    : "The mouse is left to the terminal, to select text with. F4 takes it back.");
                return null;
            case Ask.NextLook:
                Look = Look.Next;
                _desk.Look = Look.Name;
                Status($"Look: {Look.Name}.");
                return null;
            case Ask.Labels labels:
                var sheet = _desk.ChooseLabels(labels.Typed);
                if (!sheet.Ok)
                    return Refuse(sheet.Reason!);
                Context = See(Context.Report);
                Status($"Labels are written for {sheet.Value} from now on, also in other houses.");
                return null;
            case Ask.Leave:
                _confirm = _scribe is not null ? AskLeaving("Leave TrimOut?", "q leaves", "q", new Ask.LeaveNow())
                    : new Ask.Confirm("Leave TrimOut? q leaves, any other key stays.", "q", new Transition(Screen, new Ask.LeaveNow()));
                return null;
            case Ask.LeaveNow:
                _work?.Dispose();
                Left = true;
                return null;
            case Ask.Help:
                _stack.Add(HelpScreen.For(this));
                return null;
            case Ask.Section section:
                Show(section.Make(Context));
                _stack[^1] = _stack[^1].Fit(Context);
                return section.Then is { } then ? Do(then) : null;
            case Ask.Action action:
                Status("");
                return Do(action.What);
            default:
                throw new InvalidOperationException($"Nobody carries out {turn.Ask.GetType().Name}.");
        }
    }

    private string? Do(IKeyAction action) => action.DisabledBecause(Screen, Context) is { } why ? Refuse(why) : Apply(action.Press(Screen, Context));

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
            return came.Value is Ask.Open && Screen.GetType() != work.AskedOn.GetType() ? null : Apply(new Transition(Screen,
                came.Value is Ask.Confirm asks ? asks with { OnYes = asks.OnYes with { Screen = Screen } } : came.Value));
        }
    }

    /// <summary>A main screen in place of what lies above the job sheet, or above the walk that it was gone to from: Esc goes back there.</summary>
    private void Show(IScreen section)
    {
        var walk = _stack.ElementAtOrDefault(2) as WalkScreen;
        if (walk is not null && section is WalkScreen && Screen is not WalkScreen)
            section = (Screen as IAsked)?.UnitAt(Context) is { } unit ? WalkScreen.At(Context, walk.Phase, unit.Id) : walk;
        _stack.RemoveRange(2, Math.Max(0, _stack.Count - 2));
        if (walk is not null && _stack[^1] is JobSheetScreen sheet)
            _stack[^1] = sheet.After(walk, Context);
        if (section is JobSheetScreen)
            return;
        if (walk is not null && section is not WalkScreen)
            _stack.Add(walk);
        _stack.Add(section);
    }

    private string? Back()
    {
        if (_stack.Count == 1)
        {
            Status("This is the first screen. q leaves TrimOut.");
            return null;
        }
        var left = Screen;
        LookNoMore(left);
        _stack.RemoveAt(_stack.Count - 1);
        if (left is WalkScreen walk && _stack[^1] is JobSheetScreen sheet)
            _stack[^1] = sheet.After(walk, Context);
        if (_stack.Count == 1 && _scribe is { } scribe)
        {
            _desk.Close(scribe);
            _scribe = null;
            _taken = null;
            Caused = Caused.Nothing;
            Context = See();
            _stack[0] = PickerScreen.At(_desk);
            if (_cameFrom is { } firm)
                _stack.Add(firm with { Board = _desk.Firm() });
            _cameFrom = null;
        }
        _stack[^1] = _stack[^1].Fit(Context);
        return null;
    }

    /// <summary>Houses that nobody looks at are not looked after.</summary>
    private static void LookNoMore(IScreen left) => (left as FirmScreen)?.Board.Stop();

    private string? Save(Ask.Save save)
    {
        if (_scribe is null)
            return Refuse("No house is open.");
        if (!save.Draft.Ok)
            return Refuse(save.Draft.Reason!);
        var saved = _scribe.Record(save.Draft.Value);
        return saved.Ok ? Saved(saved.Value, save.Then) : NotSaved(saved.Reason!);
    }

    /// <summary>The question before leaving a house, and whether all is saved: by a look at the file itself, and by how the last save ended.</summary>
    private Ask.Confirm AskLeaving(string question, string leaves, string yes, Ask then)
    {
        var gone = _scribe!.Store.NotHeldBecause;
        SaveFailed = SaveFailed || gone is not null;
        return new Ask.Confirm(SaveFailed
            ? $"{question} NOT SAVED. F2 writes all elsewhere, {leaves}, any other key stays. {gone ?? _scribe.NotSaved}"
            : $"{question} All is saved. {leaves}, any other key stays.", yes, new Transition(Screen, then));
    }

    /// <summary>What failed may have left the house for reading only.</summary>
    private string NotSaved(string why)
    {
        Context = See(Context.Report);
        SaveFailed = true;
        return Refuse($"{why} F2 writes all to a new file and goes on there.");
    }

    private string? Saved(Change change, Func<IScreen, ScreenContext, Transition>? then = null)
    {
        SaveFailed = false;
        _taken = null;
        var before = Context.Report;
        Context = See(before);
        Caused = Caused.With(change, before, Context.Report);
        _stack[^1] = _stack[^1].Fit(Context);
        Status($"Saved: {change.What}");
        var refused = then is null ? null : Apply(then(Screen, Context));
        // Behind what the next step says of itself, which would take its place.
        var lost = PhotoNote.Of(change, Context, path => _desk.IsThere(Context.Where, path));
        if (lost.Length > 0 && !_status.Contains(lost, StringComparison.Ordinal))
            Status($"Saved: {change.What}{lost}");
        // Where one line follows the other the status is not seen: what was saved stands above what the next line may be.
        if (Typing is { Entry.LineByLine: true, Note: null } next)
            Typing = next with { Note = $"Saved: {change.What}. {ShellFrame.Understood(next, Context)}" };
        return refused;
    }

    /// <summary>Takes a copy in, and shows what came: the history, and above it what the two disagree about, where there is anything.</summary>
    private string? TakeIn(Ask.TakeIn take)
    {
        var came = _scribe!.TakeIn(take.Merge);
        if (!came.Ok)
            return NotSaved(came.Reason!);
        var all = came.Value.New;
        SaveFailed = false;
        var before = Context.Report;
        Context = See(before);
        if (!all.IsEmpty)
            Caused = Caused.With(all[^1] with { Edits = [.. all.SelectMany(c => c.Edits)] }, before, Context.Report);
        _taken = all.IsEmpty ? null : all;
        Apply(new Transition(Screen, new Ask.Section(HistoryScreen.At)));
        var conflicts = ConflictsScreen.At(Context);
        if (!conflicts.All.IsEmpty)
            _stack.Add(conflicts);
        Status($"{NumberText.Counted(all.Length, "change")} came in from {Path.GetFileName(take.From)}. u takes that back.");
        return null;
    }

    private string? Enter(Ask.Enter enter)
    {
        var opened = enter.How(_desk);
        if (!opened.Ok && enter.Path is { } path && _desk.CanStillLook)
        {
            _stack.RemoveRange(1, _stack.Count - 1);
            _stack.Add(new LockedHouseScreen(new LockedHouse(path, opened.Reason!)));
            return null;
        }
        if (!opened.Ok)
            return Refuse(opened.Reason!);
        LookNoMore(Screen);
        _cameFrom = Screen as FirmScreen;
        _scribe = opened.Value;
        Context = See();
        Begin();
        return null;
    }

    /// <summary>Shows the house that was opened, and above it what has to be read first.</summary>
    private void Begin()
    {
        SaveFailed = false;
        Caused = Caused.Nothing;
        _stack.RemoveRange(1, _stack.Count - 1);
        _stack.Add(JobSheetScreen.At(Context));
        if (_desk.Notices is { Count: > 0 } notices)
            _stack.Add(new NoticeScreen(notices));
        Status(Context.ReadOnlyBecause is { } why
            ? $"Opened for reading only: {why}"
            : $"This house is kept in {Context.Where}. Every change is saved there at once.");
    }

    private void AskElsewhere()
    {
        _where = new Entry("Write the whole house to", _desk.Elsewhere(_scribe!), "a new file, where you go on; the old one stays as it is",
            (path, _) => path.Trim().Length == 0 ? new Refusal("Type where.") : new Transition(Screen, new Ask.ElsewhereNow(path.Trim())));
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
        Context = See();
        Status($"Written to {Context.Where}. What you do from now on is saved there.");
        (Typing, _typedBefore) = (_typedBefore is { } before ? before with { Note = $"{_status} Enter saves what you typed." } : null, null);
        return null;
    }

    private string? AskUndo()
    {
        if (_taken is { } taken)
        {
            _confirm = new Ask.Confirm($"Take back {NumberText.Counted(taken.Length, "change")} that came in? A copy that takes this house in has that too. "
                + "u takes them back, any other key leaves them.", "u", new Transition(Screen, new Ask.Carry(s => s.TakeBack(taken))));
            return null;
        }
        if (Context.UndoNext is not { } last)
            return Refuse("There is nothing to undo on this laptop.");
        var typed = EvidenceLeft.TypedFor(last, Context.Log, Context.House, Context.Steps);
        var with = typed.IsEmpty ? "" : $", and what was typed for it: {EvidenceLeft.Named(typed, Context.House)}";
        _confirm = new Ask.Confirm($"Undo \"{last.What}\"{with}?{EvidenceLeft.In(last, typed, Context.House, Context.Steps)} u undoes "
            + $"{(typed.IsEmpty ? "it, any other key leaves it" : "all of it, any other key leaves it")}.", "u", new Transition(Screen,
                new Ask.Carry(s => s.Undo(typed))));
        return null;
    }

    private string? AskRedo()
    {
        if (Context.RedoNext is not { } undo)
            return Refuse("There is nothing to redo: something else was done since, or nothing was undone.");
        _confirm = new Ask.Confirm($"Bring back what was undone: \"{Scribe.WithoutUndo(undo.What)}\"? U brings it back, any other key leaves it.", "U",
            new Transition(Screen, new Ask.Carry(s => s.Redo())));
        return null;
    }
}

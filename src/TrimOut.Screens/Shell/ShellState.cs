using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.History;
using TrimOut.Screens.HousePicker;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Notices;
using TrimOut.Screens.Punch;
using TrimOut.Screens.Sheets;

namespace TrimOut.Screens.Shell;

/// <summary>Keeps the stack of screens, carries out what they ask, and draws the whole. Knows no terminal.</summary>
internal sealed partial class ShellState
{
    private readonly IDesk _desk;
    private readonly List<IScreen> _stack;
    private Firm.FirmScreen? _cameFrom;
    private Scribe? _scribe;
    private Ask.Confirm? _confirm;
    private string _status = "";
    private bool _statusIsBad;
    private Entry? _where;
    private Typing? _typedBefore;
    private IScreen? _before;
    private readonly Action<Action> _beside;
    private SideWork? _work;
    private BeforeChecks? _beforeChecks;

    // What may take long runs beside the keys; where no way to do that is given it runs at once.
    public ShellState(IDesk desk, Scribe? scribe, Look? look = null, Glyphs? glyphs = null, LockedHouse? held = null, Action<Action>? beside = null)
    {
        _desk = desk;
        _beside = beside ?? (work => work());
        _scribe = scribe;
        Glyphs = glyphs ?? Glyphs.Drawn;
        Look = look ?? Look.Named(desk.Look);
        Context = See();
        _stack = [PickerScreen.At(desk)];
        if (scribe is not null)
            Begin();
        else if (held is not null)
            _stack.Add(new LockedHouseScreen(held));
        if (desk.Who is null)
            Typing = new Typing(WhoEntry(), desk.UsualWho, null);
    }

    public Glyphs Glyphs { get; }

    public Look Look { get; private set; }

    public ScreenContext Context { get; private set; }

    public IScreen Screen => _stack[^1];

    public Typing? Typing { get; private set; }

    public bool Left { get; private set; }

    /// <summary>What saved values brought up and nobody has seen yet.</summary>
    public Caused Caused { get; private set; } = Caused.Nothing;

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
        var before = Context.Now;
        Context = See(Context.Report);
        _rings |= Screen is ITicking counts && counts.EndsAt(Context) is { } end && before < end && Context.Now >= end;
        TakeWork();
    }

    /// <summary>How many parts the message has that stands at the foot of the screen.</summary>
    internal int MessageParts { get; set => MessagePart = (field = value) > MessagePart ? MessagePart : 0; } = 1;

    /// <summary>Which of them is shown, from 0.</summary>
    internal int MessagePart { get; private set; }

    public void Press(string stroke)
    {
        if (stroke == MoreKey && MessageParts > 1)
        {
            MessagePart = (MessagePart + 1) % MessageParts;
            return;
        }
        MessagePart = 0;
        // A program left open overnight knows by its next key which day it is.
        if (Screen is ITicking || DateOnly.FromDateTime(_desk.Clock.GetLocalNow().DateTime) != Context.Today)
            Tick();
        var word = BeginsWord(stroke);
        // A number that strayed is looked at before anything else: not even a stop takes the Esc that leads back to it.
        if (Typing is null && _confirm is null && !IsInWord(stroke) && !(stroke == "esc" && _work is not null) && StraysBack(stroke))
            Caused = Caused.LookedAt;
        else if (!GoesOnInWord(stroke) && !SaysSeen(stroke))
            Answer(stroke);
        _word = word;
        Caused = Caused.Still(Context.Report);
    }

    /// <summary>Whether a key said that what was caused is seen, or went to the field that mends it. While one types, or is asked, no key does.</summary>
    private bool SaysSeen(string stroke)
    {
        if (Caused.Shown is not { } worst || Typing is not null || _confirm is not null)
            return false;
        if (stroke == "f" && Screen is not AsItStoodScreen)
        {
            Caused = Caused.Next;
            Status("");
            var there = MendedAt.Of(Context, worst.Found.Mends);
            Apply(new Transition(Screen, new Ask.Open(there, InPlace: Screen is SheetScreen sheet ? there is SheetScreen same && sheet.Of == same.Of
                : Screen.GetType() == there.GetType())));
            return true;
        }
        var seen = stroke == "esc" && FindingSigns.IsStop(worst);
        Caused = Screen is PunchScreen || seen ? Caused.Nothing : Caused.LookedAt;
        if (seen)
            Status("");
        return seen;
    }

    private void Answer(string stroke)
    {
        if (_confirm is { } confirm)
        {
            _confirm = null;
            Status("");
            if (stroke == "enter" && !confirm.OthersAct && !confirm.IsYes(stroke))
            {
                _confirm = confirm with { Entered = true };
                return;
            }
            if (confirm.IsYes(stroke))
                Apply(confirm.OnYes);
            else if (stroke == ElsewhereKey && SaveFailed && _scribe is not null && confirm.OnYes.Ask is Ask.LeaveNow or Ask.BackNow)
                AskElsewhere();
            else if (confirm.OnNo is { } no)
            {
                Apply(no);
                // Whoever typed on past the question loses no letter of it.
                if (Typing is not null && stroke is [var sign] && !char.IsControl(sign))
                    TextChanged(stroke);
            }
            else if (!confirm.OthersAct)
                Status("Nothing was done.");
            if (confirm.IsYes(stroke) || !confirm.OthersAct)
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
        if (StraysBack(stroke))
            return;
        var action = Actions.Select(a => a.Action).FirstOrDefault(a => a.Strokes.Contains(stroke));
        if (action is null)
            Status($"{KeyNames.Shown(stroke)} does nothing here. {(Screen.WordsType(Context) ? "Enter opens what is under the cursor. " : "")}"
                + "? shows the keys.");
        else if (action.DisabledBecause(Screen, Context) is { } why)
            Status(why);
        else
            Apply(action.Press(Screen, Context));
    }

    public void TextChanged(string text)
    {
        if (Typing is { } full && text.Length > MostTyped)
        {
            Typing = full with
            {
                Begun = true,
                Text = text[..(char.IsHighSurrogate(text[MostTyped - 1]) ? MostTyped - 1 : MostTyped)],
                Note = null,
                Refused = $"A field takes {NumberText.Plain(MostTyped)} characters. The {NumberText.Plain(text.Length - MostTyped)} after them are left out.",
            };
            return;
        }
        if (Typing is not { } typing || typing.Text == text || LineGoesOnInWord(text))
            return;
        var refused = text.Length > 0 && typing.Entry.Echo?.Invoke(text, Context) is { Ok: false } bad ? bad.Reason : null;
        var fit = refused is null || typing.Entry.Options.Count == 0 ? [] : Choosing.Fitting(typing.Entry.Options, text);
        // What can still become one of the choices is not wrong yet.
        Typing = typing with
        {
            Text = text,
            Sought = text,
            Begun = true,
            Note = fit.Count > 0 ? Choosing.InWords(fit) : null,
            Refused = fit.Count > 0 ? null : refused,
        };
        if (typing.Entry.Live is { } live)
            _stack[^1] = live(Screen, text, Context);
    }

    /// <summary>Text was pasted into the field that is open.</summary>
    /// <param name="text">What stands in the field now.</param>
    /// <param name="breaks">How many line breaks of it became spaces: a field is one line, and nothing changes without a word.</param>
    public void Pasted(string text, int breaks)
    {
        TextChanged(text);
        if (Typing is not { } typing || breaks == 0)
            return;
        var said = $"{NumberText.Counted(breaks, "line break")} of what was pasted became {(breaks == 1 ? "a space" : "spaces")}.";
        Typing = typing.Refused is { } refused ? typing with { Refused = $"{refused} {said}" }
            : typing with { Note = typing.Entry.Warning is { } warning ? $"{said} {warning}" : said };
    }

    /// <summary>Text was pasted where no field is open.</summary>
    public void PastedNowhere(string text) =>
        Status($"Nothing took the {NumberText.Counted(text.Length, "character")} that you pasted: no field is open. Open one, and paste again.", bad: true);

    public Frame Draw(int width, int height)
    {
        var frame = new Frame(width, height);
        DrawOn(frame);
        return frame;
    }

    /// <summary>
    /// What is shown until the checks of a house that was just opened are done; null once they are, and where something else than its sheet is on the screen.
    /// </summary>
    public Frame? DrawBeforeChecks(int width, int height)
    {
        if (!LooksBeforeChecks() || width < MinimumWidth || height < MinimumHeight)
            return null;
        var frame = new Frame(width, height);
        _beforeChecks!.Draw(frame.All);
        if (Glyphs == Glyphs.Ascii)
            frame.Replace("…", "~");
        return frame;
    }

    /// <summary>Reads of the house what is shown until its checks are done. Nothing else may read it until they are.</summary>
    /// <returns>Whether that is to be shown.</returns>
    public bool LooksBeforeChecks()
    {
        if (Context.IsChecked || Typing is not null || _confirm is not null || Screen is not JobSheetScreen sheet)
            return false;
        if (_beforeChecks?.Context != Context)
            _beforeChecks = BeforeChecks.Of(sheet, Context);
        return true;
    }

    /// <summary>Draws on an empty frame.</summary>
    internal void DrawOn(Frame frame)
    {
        var (width, height) = (frame.Width, frame.Height);
        if (width < MinimumWidth || height < MinimumHeight)
        {
            frame.All.PutWrapped(0, 0, height, string.Create(CultureInfo.InvariantCulture,
                $"TrimOut needs {MinimumWidth} x {MinimumHeight} characters. This window has {width} x {height}. Make it larger; nothing is lost."),
                    Tone.Strong);
            return;
        }
        ShellFrame.Draw(this, frame, _confirm, _status, _statusIsBad);
        (_drawn, _drawnOf) = (frame, Screen);
        if (Glyphs == Glyphs.Ascii)
            frame.Replace("…", "~");
    }

    /// <summary>Works while something is typed too, so that what a full disk refused is not lost.</summary>
    public const string ElsewhereKey = "f2";

    /// <summary>Leaves the mouse to the terminal, or takes it back.</summary>
    public const string MouseKey = "f4";

    /// <summary>Draws the whole terminal again, whatever something else wrote over it.</summary>
    public const string RedrawKey = "ctrl+l";

    /// <summary>Shows the next part of a message that is too long for the foot of the screen, whatever is asked there.</summary>
    public const string MoreKey = "f5";

    /// <summary>Empties the line that is being typed.</summary>
    public const string EmptyKey = "ctrl+u";

    /// <summary>The most characters that a field takes: more than any detail may have.</summary>
    public const int MostTyped = 4_000;

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
                if (typing.Entry.Live is not null)
                    _stack[^1] = _before!.Fit(Context);
                else
                    Status(DropLines() ?? "Not changed.");
                break;
            case "enter" or "tab" when typing.Entry.Live is not null && Screen is IFiltered filtered:
                if (filtered.Search.Length > 0 && filtered.Count(Context).Shown == 0)
                {
                    Typing = typing with { Refused = $"Nothing here has \"{typing.Text.Trim()}\"." };
                    break;
                }
                Typing = null;
                _stack[^1] = filtered.Found(Context).Fit(Context);
                break;
            case "up" or "down" or "pageup" or "pagedown" when typing.Entry.Live is not null:
                var inList = (Screen as IFiltered)?.InTheList(stroke) ?? stroke;
                if (Screen.Keys.FirstOrDefault(a => a.Strokes.Contains(inList)) is { } move)
                    _stack[^1] = move.Press(Screen, Context).Screen;
                break;
            case "enter" or "tab":
                Accept(stroke);
                if (_pastedLines.Count > 0 && Typing is { Refused: null })
                    TakeWaitingLines(1);
                break;
            case ElsewhereKey when _scribe is not null && typing.Entry != _where:
                AskElsewhere();
                _typedBefore = typing with { Refused = null };
                break;
            case "down" when typing.Entry is { GoesOn: true, Options.Count: 0 } && typing.Text == typing.Entry.Initial:
                // A hand that knows lists goes down after Enter, which went on by itself.
                Typing = typing with { Note = $"Enter went on by itself: this is {typing.Entry.Label}. {typing.Entry.Hint}", Stays = true };
                break;
            case "up" or "down" when typing.Entry.Options.Count > 0:
                Typing = typing with { Text = Choosing.Next(typing, stroke == "down" ? 1 : -1), Begun = false, Note = null, Refused = null };
                break;
        }
    }

    /// <summary>Takes what was typed; where that is refused it stays, with the reason.</summary>
    private void Accept(string stroke)
    {
        var typing = Typing!;
        if (typing.Stays && typing.Text == typing.Entry.Initial)
        {
            Typing = typing with { Stays = false, Note = $"{typing.Entry.Label}: type it. Enter once more goes on as it stands. {typing.Entry.Hint}" };
            return;
        }
        var accept = stroke == "tab" ? typing.Entry.AcceptAndNext ?? typing.Entry.Accept : typing.Entry.Accept;
        var taken = accept(typing.Text, Context);
        if (!taken.Ok)
        {
            Typing = typing with { Refused = taken.Reason };
            return;
        }
        if (typing.Doubted != typing.Text && typing.Entry.Doubt?.Invoke(typing.Text, Context) is { } doubt)
        {
            Typing = typing with { Refused = $"{doubt} Enter once more takes it as it is typed.", Doubted = typing.Text };
            return;
        }
        Typing = null;
        if (Apply(taken.Value) is { } refused)
            Typing = typing with { Refused = refused };
    }

    private string Refuse(string why)
    {
        Status(why, bad: true);
        return why;
    }

    private void Status(string text, bool bad = false) => (_status, _statusIsBad) = (text, bad);

    private ScreenContext See(CheckReport? before = null) => new(_scribe, _desk.Papers, _desk.Clock.GetLocalNow(), Glyphs, before)
    {
        Labels = new LabelSheets(_desk.LabelSheet, _desk.LabelSheets, _desk.LabelsInWords),
        AsksOffice = _desk.Office,
    };
}

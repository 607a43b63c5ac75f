using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <content>A number that was typed where a reading was meant, before its field was opened: digits go to other screens, and there is a way back.</content>
internal sealed partial class ShellState
{
    /// <summary>Keys of one number come one after the other: what comes after a pause is a key.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(600);

    private Strayed? _strayed;

    /// <summary>Where one was when a digit led away from something that a figure can be typed for, and what was typed so far.</summary>
    /// <param name="Stack">The screens as they were.</param>
    /// <param name="Typed">What was typed since.</param>
    /// <param name="Asked">Whether a key came after it that a typist presses, and would do something else here: then it is asked what was meant.</param>
    /// <param name="Ended">Whether the number was ended: what is typed after it is another one, and waits for the answer.</param>
    /// <param name="Nowhere">
    /// Whether no figure was meant where it was typed: then digits are keys, and only a number of several of them that is ended is asked about.
    /// </param>
    private sealed record Strayed(IReadOnlyList<IScreen> Stack, string Typed, bool Asked = false, bool Ended = false, bool Nowhere = false)
    {
        public string From => Stack[^1].Title;

        /// <summary>When its last digit came.</summary>
        public DateTimeOffset At { get; init; }
    }

    /// <summary>
    /// Looks whether a key is one more of a number that strayed, or leads back: Esc goes back to where the number was meant, and with it what was typed of it
    /// when it was more than one digit; a decimal point or a mark of feet or inches, which lead nowhere else, do so at once. What ends a number, or goes on in
    /// one, does nothing here before it is said what was meant: a reading must not be saved elsewhere.
    /// </summary>
    /// <returns>Whether the key is done with.</returns>
    private bool StraysBack(string stroke)
    {
        var strayed = _strayed;
        _strayed = null;
        if (strayed is { Asked: true })
        {
            Settle(strayed, stroke);
            return true;
        }
        if (strayed is { Nowhere: false } && stroke is "esc" or "." or "," or "'" or "\"")
        {
            GoBackTo(strayed!, stroke == "esc" ? "" : stroke, typing: stroke != "esc" || strayed!.Typed.Length > 1);
            return true;
        }
        if (strayed is not null && _desk.Clock.GetUtcNow() - strayed.At > Pause)
            strayed = null;
        if (strayed is { Nowhere: false } or { Typed.Length: > 1 }
            && stroke is "enter" or "tab" or "space" or "x" or "/" or "-" or "+" or "backspace" or "delete")
        {
            AskWhatWasMeant(strayed!, stroke);
            return true;
        }
        if (stroke is not [>= '0' and <= '9'] || _scribe is null)
            return false;
        var types = Screen.TypesBy(Context) is not null;
        // A digit that led to where figures are typed was a key; the next one is the first of a figure.
        if (strayed is { Nowhere: true } && types)
            strayed = null;
        var next = new Strayed(strayed?.Stack ?? [.. _stack], strayed?.Typed + stroke, Nowhere: strayed?.Nowhere ?? !types) { At = _desk.Clock.GetUtcNow() };
        Status("");
        Apply(CommonKeys.Sections.First(s => s.Stroke == stroke).Press(Screen, Context));
        _strayed = next;
        if (!next.Nowhere)
        {
            var there = next.Typed.Length > 1 ? $" and types {next.Typed} there" : "";
            Status($"{KeyNames.Shown(stroke)} is {Screen.Title}. Esc goes back to {next.From}{there}.");
        }
        return true;
    }

    private void AskWhatWasMeant(Strayed strayed, string stroke)
    {
        _strayed = strayed = strayed with
        {
            Asked = true,
            Ended = strayed.Ended || stroke is "enter" or "tab",
            Typed = strayed.Ended ? strayed.Typed : Longer(strayed.Typed, stroke),
        };
        Status((strayed.Nowhere ? $"\"{strayed.Typed.Trim()}\" was typed, and nothing took it. Esc goes back to {strayed.From}; "
            : $"\"{strayed.Typed.Trim()}\" was typed for {strayed.From}. Esc goes back and types it there; ")
            + $"an arrow key stays in {Screen.Title}, and it is not taken.", bad: true);
    }

    private void Settle(Strayed strayed, string stroke)
    {
        if (stroke == "esc")
            GoBackTo(strayed, "", typing: !strayed.Nowhere);
        else if (Moves.Strokes.Contains(stroke))
            Status($"\"{strayed.Typed.Trim()}\" was not taken.");
        else
            AskWhatWasMeant(strayed, stroke);
    }

    private static string Longer(string typed, string stroke) => stroke switch
    {
        "space" => typed + " ",
        "backspace" or "delete" when typed.Length > 1 => typed[..^1],
        [_] => typed + stroke,
        _ => typed,
    };

    private void GoBackTo(Strayed strayed, string more, bool typing)
    {
        _stack.Clear();
        _stack.AddRange(strayed.Stack);
        _stack[^1] = _stack[^1].Fit(Context);
        Status("");
        if (typing)
            TypeHere(strayed.Typed + more);
    }

    /// <summary>Opens the field of what is under the cursor, with a text in it.</summary>
    private void TypeHere(string text)
    {
        if (Screen.TypesBy(Context) is not { } key)
            return;
        var action = Screen.Keys.First(a => a.Strokes.Contains(key));
        if (action.DisabledBecause(Screen, Context) is not null)
            return;
        Apply(action.Press(Screen, Context));
        if (Typing is { } field)
        {
            Typing = field with { Text = "" };
            TextChanged(text.Trim());
        }
    }

    private Entry WhoEntry() => new("Who is working here", "", "your name; it stands beside every change, and is asked for once on this machine",
        (text, _) => text.Trim().Length is 0 or > 60 ? new Refusal("Type a name of up to 60 characters.") : new Transition(Screen, new Ask.Named(text.Trim())))
    {
        Echo = (text, _) => text.Trim().Length > 60
            ? new Refusal(string.Create(CultureInfo.InvariantCulture, $"{NumberText.Counted(text.Trim().Length, "character")}: 60 are the most."))
            : "Enter takes it; F3 changes it later. --by says it for one time only.",
    };
}

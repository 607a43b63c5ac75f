using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <content>A number that was typed where a reading was meant, before its field was opened: digits go to other screens, and there is a way back.</content>
internal sealed partial class ShellState
{
    private Strayed? _strayed;

    /// <summary>Where one was when a digit led away from something that a figure can be typed for, and the digits so far.</summary>
    private sealed record Strayed(IReadOnlyList<IScreen> Stack, string Typed);

    /// <summary>
    /// Looks whether a key is one more of a number that strayed, or leads back: Esc goes back to where the number was meant, and with it what was typed of it
    /// when it was more than one digit; a decimal point, which leads nowhere else, does so at once.
    /// </summary>
    /// <returns>Whether the key is done with.</returns>
    private bool StraysBack(string stroke)
    {
        var strayed = _strayed;
        _strayed = null;
        if (strayed is not null && stroke is "esc" or "." or ",")
        {
            GoBackTo(strayed!, stroke == "esc" ? "" : stroke);
            return true;
        }
        if (stroke is not [>= '0' and <= '9'] || _scribe is null || (strayed is null && Screen.TypesBy(Context) is null))
            return false;
        var next = new Strayed(strayed?.Stack ?? [.. _stack], strayed?.Typed + stroke);
        var from = next.Stack[^1].Title;
        Apply(CommonKeys.Sections.First(s => s.Stroke == stroke).Press(Screen, Context));
        _strayed = next;
        Status($"{KeyNames.Shown(stroke)} is {Screen.Title}. Esc goes back to {from}{(next.Typed.Length > 1 ? $" and types {next.Typed} there" : "")}.");
        return true;
    }

    private void GoBackTo(Strayed strayed, string more)
    {
        _stack.Clear();
        _stack.AddRange(strayed.Stack);
        _stack[^1] = _stack[^1].Fit(Context);
        var typed = strayed.Typed + more;
        if (typed.Length < 2 || Screen.TypesBy(Context) is not { } key)
            return;
        var action = Screen.Keys.First(a => a.Strokes.Contains(key));
        if (action.DisabledBecause(Screen, Context) is not null)
            return;
        Apply(action.Press(Screen, Context));
        if (Typing is { } typing)
        {
            Typing = typing with { Text = "" };
            TextChanged(typed);
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

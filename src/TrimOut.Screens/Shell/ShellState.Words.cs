using TrimOut.Core.Houses;
using TrimOut.Screens.Sheets;

namespace TrimOut.Screens.Shell;

/// <content>A word that was typed where a value was meant, before its field was opened: what its first letter did as a key is taken back.</content>
internal sealed partial class ShellState
{
    /// <summary>Letters of a word come faster than keys of which each is looked at.</summary>
    private static readonly TimeSpan Quick = TimeSpan.FromMilliseconds(400);

    private BegunWord? _word;

    /// <summary>What was there before a letter that may have been the first of a word, and whether that letter is a key there.</summary>
    private sealed record BegunWord(IReadOnlyList<IScreen> Stack, House House, Look Look, string Letter, bool IsKey, DateTimeOffset At);

    private BegunWord? BeginsWord(string stroke) =>
        _scribe is not null && Typing is null && _confirm is null && _strayed is null
            && stroke is [var sign] && char.IsAsciiLetter(sign) && Screen.WordsType(Context)
            ? new BegunWord([.. _stack], Context.House, Look, stroke, Actions.Any(a => a.Action.Strokes.Contains(stroke)), _desk.Clock.GetUtcNow()) : null;

    /// <summary>
    /// Whether a key is the second letter of a word. Then what the first one did, which saved nothing, is taken back, and the field is opened with both. The
    /// same letter again is a key that is held, and what comes later is a key; a digit goes on only where the letter was no key.
    /// </summary>
    private bool GoesOnInWord(string stroke)
    {
        if (Typing is not null || _confirm?.IsYes(stroke) == true || !IsInWord(stroke))
            return false;
        TakeBackTo(_word!, stroke);
        return Typing is not null;
    }

    /// <summary>
    /// The same where the first letter opened a line that is typed: only where what is under the cursor is one of a list, and the two letters begin one of it.
    /// </summary>
    private bool LineGoesOnInWord(string text)
    {
        if (Typing is not { Begun: false } || !IsInWord(text) || _word!.Stack[^1] is not SheetScreen { Current: { Fact: { } fact } }
            || !fact.Options(Context.House).Any(o => o.Shown.StartsWith(_word.Letter + text, StringComparison.OrdinalIgnoreCase)))
            return false;
        Typing = null;
        TakeBackTo(_word, text);
        return true;
    }

    private bool IsInWord(string sign) => _word is { } word && sign != word.Letter && sign is [var second] && word.Letter is [var first]
        && (char.IsAsciiLetterLower(second) || (char.IsAsciiLetterUpper(second) && char.IsAsciiLetterUpper(first))
            || (char.IsAsciiDigit(second) && !word.IsKey))
        && Context.House == word.House && _desk.Clock.GetUtcNow() - word.At <= Quick && !IsKeyOfWhatOpened(word, sign);

    /// <summary>Whether the first letter opened another screen that has a key of its own for the second: then both were keys, however fast they came.</summary>
    private bool IsKeyOfWhatOpened(BegunWord word, string letter) =>
        Screen.GetType() != word.Stack[^1].GetType() && Screen.Keys.Any(k => k.Strokes.Contains(letter));

    private void TakeBackTo(BegunWord word, string second)
    {
        (_word, _confirm) = (null, null);
        _stack.Clear();
        _stack.AddRange(word.Stack);
        _stack[^1] = _stack[^1].Fit(Context);
        if (Look != word.Look)
            _desk.Look = (Look = word.Look).Name;
        Status("");
        TypeHere(word.Letter + second);
    }
}

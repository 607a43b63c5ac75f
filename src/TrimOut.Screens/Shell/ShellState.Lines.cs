using TrimOut.Core;
using TrimOut.Core.Units;

namespace TrimOut.Screens.Shell;

/// <content>Several lines that are pasted where one line after the other is typed.</content>
internal sealed partial class ShellState
{
    // Lines that were pasted and not taken yet, in their order.
    private readonly Queue<string> _pastedLines = new();

    /// <summary>
    /// Takes pasted lines one after the other, as if each was typed and taken; the first that is refused stands in the field, and the others wait behind it.
    /// </summary>
    /// <param name="text">What was pasted.</param>
    /// <returns>Whether it was taken: not a single line, nor several where only one can be.</returns>
    public bool TakeLines(string text)
    {
        if (Typing is not { Entry.LineByLine: true } typing)
            return false;
        var lines = text.Split(['\n', '\r'], StringSplitOptions.RemoveEmptyEntries).Select(l => ShownText.Kept(l).Trim()).Where(l => l.Length > 0).ToList();
        if (lines.Count < 2)
            return false;
        // What was typed before belongs to the first line; the tag that the field begins with makes way for one that is pasted.
        var begun = typing.Text == typing.Entry.Initial ? "" : typing.Text;
        foreach (var line in lines.Skip(1).Prepend(begun + lines[0]))
            _pastedLines.Enqueue(line);
        TakeWaitingLines(0);
        return true;
    }

    /// <summary>Goes on with the lines that wait, until one is refused.</summary>
    /// <param name="taken">How many were taken before.</param>
    private void TakeWaitingLines(int taken)
    {
        while (Typing is { Entry.LineByLine: true } && _pastedLines.TryDequeue(out var line))
        {
            TextChanged(line);
            Accept("enter");
            if (Typing is { } still && still.Text == line && still.Refused is { } why)
            {
                if (_pastedLines.Count > 0)
                    Typing = still with { Refused = $"{Waiting()}. {why}" };
                return;
            }
            taken++;
        }
        if (taken < 2 || _pastedLines.Count > 0)
            return;
        var said = $"{NumberText.Counted(taken, "pasted line")} taken, each saved by itself.";
        if (Typing is { } next)
            Typing = next with { Note = said };
        else
            Status(said);
    }

    /// <summary>What becomes of waiting lines when the field is left.</summary>
    /// <returns>What to say; null where none waited.</returns>
    private string? DropLines()
    {
        var said = _pastedLines.Count == 0 ? null : $"{NumberText.Counted(_pastedLines.Count + 1, "pasted line was", "pasted lines were")} not taken.";
        _pastedLines.Clear();
        return said;
    }

    private string Waiting() => $"{NumberText.Counted(_pastedLines.Count, "pasted line waits", "pasted lines wait")} behind this one";
}

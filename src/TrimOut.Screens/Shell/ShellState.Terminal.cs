using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Walk;

namespace TrimOut.Screens.Shell;

/// <content>What is told to the terminal besides the screen: its title, its clipboard, its bell; and when it is handed over to another program.</content>
internal sealed partial class ShellState
{
    /// <summary>
    /// The longest text that is handed to a clipboard, in bytes: common practice, no published source; terminals drop what is longer without a word.
    /// </summary>
    private const int LongestCopy = 74_994;

    private string? _copied;
    private bool _rings;
    private Ask.Edit? _outside;

    /// <summary>Whether the terminal can be told what to copy.</summary>
    public bool CanCopy { get; init; } = true;

    /// <summary>
    /// The name of the terminal's window: the house, and the unit where a screen is about one. On a list it does not follow the cursor, which would cost
    /// bytes for every key.
    /// </summary>
    public string TerminalTitle => _scribe is null ? "TrimOut"
        : Screen is SheetScreen or WalkScreen && ((IAsked)Screen).UnitAt(Context) is { } unit ? $"{unit.Tag}, {Context.House.Name} - TrimOut"
        : $"{Context.House.Name} - TrimOut";

    /// <summary>Text that is to be edited by another program now, which the terminal is handed over to; null when there is none.</summary>
    public string? Outside => _outside?.Text;

    /// <summary>The text that was copied since this was asked last; null when none was.</summary>
    public string? TakeCopied()
    {
        var copied = _copied;
        _copied = null;
        return copied;
    }

    /// <summary>Whether the bell is to ring since this was asked last.</summary>
    public bool TakeRing()
    {
        var rings = _rings;
        _rings = false;
        return rings;
    }

    /// <summary>The other program gave the terminal back.</summary>
    /// <param name="text">The text as it was left, or why there is none.</param>
    public void CameBack(Result<string> text)
    {
        var asked = _outside;
        _outside = null;
        if (asked is null)
            return;
        Context = See(Context.Report);
        if (text.Ok)
            Apply(asked.Then(text.Value, Context));
        else
            Refuse(text.Reason!);
    }

    private string? Copy(Ask.Copy copy)
    {
        if (!CanCopy)
            return Refuse("This terminal has no clipboard that can be told what to copy.");
        var bytes = Encoding.UTF8.GetByteCount(copy.Text);
        if (bytes > LongestCopy)
            return Refuse(string.Create(CultureInfo.InvariantCulture,
                $"{copy.What} has {bytes} bytes; terminals take {LongestCopy}. Filter the list first, or take it from a paper (7)."));
        _copied = copy.Text;
        Status($"Handed to the terminal's clipboard: {copy.What}. A terminal that does not allow it says nothing.");
        return null;
    }
}

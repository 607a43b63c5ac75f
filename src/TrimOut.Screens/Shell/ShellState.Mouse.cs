using TrimOut.Screens.Frames;
using TrimOut.Screens.Punch;

namespace TrimOut.Screens.Shell;

/// <content>The mouse: nothing needs it, and it does nothing that no key does.</content>
internal sealed partial class ShellState
{
    private const int RowsANotch = 3;

    private Frame? _drawn;
    private IScreen? _drawnOf;
    private bool _onlyChose;

    /// <summary>Whether clicks are taken; else the mouse is left to the terminal, which then selects text with it.</summary>
    public bool TakesMouse => _desk.TakesMouse;

    /// <summary>Whether a place lies in the field that one types in.</summary>
    public bool IsInField(int x, int y) => Typing is not null && _drawn?.Slot is { } slot && slot.Y == y && x >= slot.X && x < slot.X + slot.Width;

    /// <summary>
    /// A click: on a key of the bottom line it presses that key, on a row it chooses the row, and on the chosen row it does what Enter does there. Where
    /// something is asked, or typed, no row is chosen.
    /// </summary>
    /// <param name="x">The column.</param>
    /// <param name="y">The line.</param>
    /// <param name="again">Whether it is the second of a double click: that opens what the first one chose, and does nothing else.</param>
    public void Click(int x, int y, bool again = false)
    {
        var onlyChose = _onlyChose;
        _onlyChose = false;
        if (_confirm is not null || !ReferenceEquals(Screen, _drawnOf) || _drawn?.Spots.LastOrDefault(s => s.Covers(x, y)) is not { } spot)
            return;
        if (spot.Stroke is { } stroke)
        {
            if (!again)
                Press(stroke);
            return;
        }
        if (Typing is not null)
            return;
        if (again ? onlyChose : spot.IsChosen)
        {
            if (Screen.Keys.Any(k => k.Strokes.Contains("enter")))
                Press("enter");
            return;
        }
        if (again || spot.Choose?.Invoke() is not { } chosen)
            return;
        _onlyChose = true;
        _strayed = null;
        Status("");
        Caused = Screen is PunchScreen ? Caused.Nothing : Caused.LookedAt;
        _stack[^1] = chosen;
    }

    /// <summary>The wheel goes through the list as Down and Up do; not past a question or a line that is typed, nor while something counts.</summary>
    /// <param name="down">Whether it was turned towards the user.</param>
    public void Wheel(bool down)
    {
        var stroke = down ? "down" : "up";
        for (var rows = 0; rows < RowsANotch; rows++)
        {
            if (_confirm is null && Typing is null && Screen is not ITicking { Ticking: true } && Screen.Keys.Any(k => k.Strokes[0] == stroke))
                Press(stroke);
        }
    }
}

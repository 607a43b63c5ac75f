using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Notices;

/// <summary>A house that another program has open: it can be looked at meanwhile.</summary>
internal sealed record LockedHouseScreen(LockedHouse House) : IScreen
{
    public string Title => "Open elsewhere";

    public IReadOnlyList<IKeyAction> Keys => HeldKeys.All;

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var text = area.Part(4, 0, area.Width - 6, area.Height);
        var y = text.PutWrapped(0, 1, area.Height / 2, House.Why) + 1;
        y = text.PutWrapped(0, y, 2, "O opens it for reading only: what is saved there from now on is seen when it is opened again.", Tone.Strong);
        text.PutWrapped(0, y, 2, "Esc goes back to the houses.", Tone.Dim);
    }
}

/// <summary>Keys for a house that another program has open.</summary>
internal static class HeldKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<LockedHouseScreen>("O", "View only", "Opens the house for reading only.",
            (s, _) => new Transition(s, new Ask.Enter(d => d.OpenToRead(s.House.Path)))),
        new KeyAction<LockedHouseScreen>("enter", "Try again", "Opens the house to work on it, when the other program has closed it.",
            (s, _) => new Transition(s, new Ask.Enter(d => d.Open(s.House.Path), s.House.Path))),
    ];
}

using TrimOut.Core.Facts;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Hours;

/// <summary>Keys of the hours.</summary>
internal static class HoursKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<HoursScreen>("enter", "Type", "Types the hours of the phase under the cursor, of all people together; nothing typed clears them.",
            (s, context) => Transition.Type(s, FactEntry.For(s, context.House, context.House.Job, HouseFacts.HoursOf(s.Current)))),
        .. Moves.Through<HoursScreen>("phase", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Phases.Length) }),
    ];
}

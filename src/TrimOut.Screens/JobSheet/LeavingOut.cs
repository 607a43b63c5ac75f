using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.JobSheet;

/// <summary>Asks why a window is left out; it stays on the list, and comes back with one key.</summary>
internal static class LeavingOut
{
    public const string Help = "Leaves the window out on purpose, and asks why; it stays on the list.";

    /// <summary>Why a window can't be left out now; null when it can.</summary>
    public static string? NotBecause(Window? window) => window is null ? "Move to a window first."
        : window.LeftOut ? $"{window.Tag} is left out already. Enter opens it with its reason, b brings it back." : null;

    public static Entry Ask(IScreen screen, Window window) => new(
        window.Units.Length > 1 ? $"Leave out {window.Tag} with its {window.Units.Length} units because" : $"Leave out {window.Tag} because",
        window.Show(WindowFacts.NotCoveredBecause), "the reason, so that nobody asks again",
        (text, now) => Reasons.Take(text, why =>
            LeaveOut.Window(now.House.FindWindow(window.Id)!, why).Then<Transition>(draft => Transition.Save(screen, draft))));
}

using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Decisions;

/// <summary>Leaves windows out on purpose, and takes them in again with all they had.</summary>
public static class LeaveOut
{
    /// <summary>A window that gets no covering, and why.</summary>
    public static Result<Draft> Window(Window window, string because) => string.IsNullOrWhiteSpace(because)
        ? new Refusal($"Say why {window.Tag} is left out, so that nobody asks again.")
        : WindowFacts.NotCoveredBecause.ReadTyped(because, window.House).Then<Draft>(stored => new Draft($"{window.Tag} left out: {stored}")
            .Put(window.Id, WindowFacts.Covered, YesNo.No)
            .PutStored(window.Id, WindowFacts.NotCoveredBecause.Name, stored));

    /// <summary>A window that gets a covering after all; why it got none before stays in the history.</summary>
    public static Draft TakeIn(Window window) => WithoutReason(
        new Draft($"{window.Tag} gets a covering after all").Put(window.Id, WindowFacts.Covered, YesNo.Yes), window.Item);

    /// <summary>The change, and with it an end to the reason why a window was left out.</summary>
    internal static Draft WithoutReason(Draft draft, Item window) => window.Get(WindowFacts.NotCoveredBecause) is not { } because ? draft
        : (draft with { What = $"{draft.What}; it was left out: {because}" }).PutStored(window.Id, WindowFacts.NotCoveredBecause.Name, null);
}

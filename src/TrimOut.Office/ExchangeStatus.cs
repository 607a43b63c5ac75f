using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Core.Units;

namespace TrimOut.Office;

/// <summary>Where a house stands with the office, as far as this device knows without asking.</summary>
/// <param name="Exchanged">When the two last exchanged everything; null where they never did.</param>
/// <param name="NotYetThere">The changes that are not yet at the office, in their order.</param>
/// <param name="PutOff">How many changes are known to be at the office and not in the house: they came with the last exchange and were not taken in.</param>
public sealed record ExchangeStatus(DateTimeOffset? Exchanged, IReadOnlyList<Change> NotYetThere, int PutOff)
{
    /// <summary>The status of a house.</summary>
    /// <param name="mark">How far it was exchanged; null where it never was.</param>
    /// <param name="log">Its history.</param>
    public static ExchangeStatus Of(ExchangeMark? mark, HouseLog log) =>
        new(mark?.Exchanged, ExchangeMark.NotYetThere(mark, log), ExchangeMark.PutOff(mark, log));

    /// <summary>The status in one line.</summary>
    public string InWords =>
        (Exchanged is { } when ? string.Create(CultureInfo.InvariantCulture, $"Last exchanged {when:yyyy-MM-dd HH:mm}, ") : "Never exchanged, ")
        + (NotYetThere.Count == 0 ? "all changes are at the office." : $"{NumberText.Counted(NotYetThere.Count, "change")} not yet at the office.")
        + (PutOff == 0 ? "" : $" Put off then: {NumberText.Counted(PutOff, "change")} from the office, not taken in here.");
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>The day of an order sheet that stands at a unit, and what of the house whoever put it knew.</summary>
/// <param name="Put">The day, and who put it.</param>
/// <param name="Seen">How far the other laptops were known then; null where nobody noted it: all that is earlier counts as known then.</param>
internal sealed record Freeze(Head Put, Seen? Seen)
{
    /// <summary>The one of a unit; null where its sheet is not frozen.</summary>
    public static Freeze? Of(Item unit) => unit.Latest(UnitFacts.OrderedOn) is { Value: DateOnly } put
        ? new Freeze(put, unit.Latest(Companion.Seen(UnitFacts.OrderedOn.Name)) is { Stored: { } seen } said && said.Id == put.Id ? Seen.Read(seen) : null)
        : null;

    /// <summary>The day.</summary>
    public DateOnly On => (DateOnly)Put.Value!;

    /// <summary>Whether a change of an earlier time was known to whoever froze the sheet.</summary>
    public bool Knew(ChangeId change) => Seen is null || change.Device == Put.Id.Device || Seen.Covers(change);

    /// <summary>Whether a value was put once the sheet was frozen, or before by another laptop without that being known.</summary>
    public bool IsBefore(Head value) => value.IsAfter(Put) || !Knew(value.Id);
}

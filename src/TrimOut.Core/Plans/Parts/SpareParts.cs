using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>What is to be had more than the house takes, as somebody typed it for the house: on lines of their own, and in no other count.</summary>
internal static class SpareParts
{
    private static readonly Message Spare = new("Spare: {0}");
    private static readonly Message AsTyped = new("so many as were typed for this house, beside {0} that it takes");
    private static readonly Message Percent = new("{0} of {1}, rounded up");
    private static readonly Message CountNotKnown = new("{0} of what the house takes, which can't be counted yet");
    private static readonly Message NotListed =
        new("so many as were typed; no part of this list is called that, and units and head covers are made to measure");

    /// <summary>The lines of what was typed.</summary>
    /// <param name="house">The house.</param>
    /// <param name="taken">What it takes.</param>
    public static IEnumerable<PartLine> Of(House house, IReadOnlyCollection<PartLine> taken) =>
        house.Job.Get(HouseFacts.Spares) is { } spares ? spares.Parts.Select(s => Of(s, taken)) : [];

    private static PartLine Of(SpareCount spare, IReadOnlyCollection<PartLine> taken)
    {
        var same = taken.Where(l => SameName.Comparer.Equals(l.Name, spare.Part)).ToList();
        var part = Spare.With(PartWords.OfKit(spare.Part));
        if (same.Count == 0)
            return new PartLine(PartGroup.Spares, part, spare.IsPercent ? null : spare.Amount, "", NotListed);
        var (count, atLeast) = (same.Sum(l => l.Count ?? 0), same.Exists(l => l.AtLeast || l.Count is null));
        var line = new PartLine(PartGroup.Spares, part, spare.Of(count), "", AsTyped.With(Arg.Number(count))) { NeededIn = same.Min(l => l.NeededIn) };
        if (!spare.IsPercent)
            return line;
        var percent = Arg.Number(spare.Amount, "%");
        return count == 0 && atLeast
            ? line with { Count = null, CountedFrom = CountNotKnown.With(percent) }
            : line.By(same) with { AtLeast = atLeast, CountedFrom = Percent.With(percent, Arg.Number(count)) };
    }
}

using TrimOut.Core.Facts;
using TrimOut.TrueHouse.Tests.Truth;

namespace TrimOut.TrueHouse.Tests.Faults.OfRoughIn;

/// <summary>A unit that is not the first of its opening gets its cable from the far jamb, and a tail that is as long as its own part.</summary>
public sealed class TailReckonedFromItsPart : Fault
{
    public override string Goes => "the tail of the last of several units, whose cable comes from the far jamb, is cut to its own part of the opening";

    public override string Costs => "a cable that ends behind its neighbor: a joint in the opening, or a new run";

    public override Stage In => Stage.Pulled;

    public override bool AsksForAStop => true;

    public override IReadOnlyList<string> DoNotNameIt => ["entry-off-lead-side", "entry-under-end-bracket", "entry-under-centre-support"];

    public override Trace? Strike(RealHouse house, Dice dice)
    {
        if (house.Wired.Where(u => u.PartWidth > 0 && u.Position > 1 && u.Lead == Side.Right).One(dice) is not { } unit)
            return null;
        unit.EntrySide = Side.Left;
        var ofItsPart = unit.EntryBelowHead + unit.PartWidth - unit.EntryFromJamb + unit.Kind.LeadBehind;
        var ofTheOpening = unit.EntryBelowHead + unit.Opening.Finished.PlumbWidth - unit.EntryFromJamb + unit.Kind.LeadBehind;
        unit.Cable!.TailAtWindow = house.UpOnTape(Math.Max(ofItsPart, unit.PartWidth) + 40);
        unit.Cable.TailFound = unit.Cable.TailAtWindow - 5;
        return At(unit.Key, (unit.Key, RunFacts.TailAtWindow), (unit.Key, UnitFacts.EntrySide))
            .Of(ofTheOpening - unit.Cable.TailAtWindow, 40 + (2 * house.TapeError));
    }
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every unit as it was made, and what became of it since.</summary>
internal static class UnitTable
{
    public static Section Section { get; } = new("units", "The units as made", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var units = data.House.Units;
        to.Filled(["Unit", "Ordered size", "Lead side", "Finish", "Head cover", "Ordered", "Maker's number", "Serial"], units.Select(u => Row(
            u.Tag, u.BySheet(x => x.Sizes(" x ", UnitFacts.OrderWidth, UnitFacts.OrderHeight)), u.Entry(UnitFacts.LeadSide),
            new[] { u.Shown(UnitFacts.Fabric), u.Shown(UnitFacts.Colour), u.Shown(UnitFacts.Opacity) }.JoinOrDash(), u.Entry(UnitFacts.HeadCover),
            u.DayOrNotYet(UnitFacts.OrderedOn, data.Date), u.EntryOrNotYet(UnitFacts.Acknowledgement), u.EntryOrNotYet(UnitFacts.Serial))), "No units yet.");

        Cords(to, units);
        UnitLives.Write(to, data);
        SinceLastBook.Write(to, data);
    }

    private static void Cords(MarkdownWriter to, IEnumerable<Unit> units)
    {
        var cords = units.Where(u => u.Shown(UnitFacts.FreeCord) is not null || AreOfAnother(u)).ToList();
        if (cords.Count == 0)
            return;
        to.Heading(3, "Cords and chains");
        to.Filled(["Unit", "Free cord", "Cord held by", "Confirmed by"], cords.Select(u => Row(
            u.Tag, AreOfAnother(u) ? u.EntryOrNotYet(UnitFacts.FreeCord) : u.Entry(UnitFacts.FreeCord), u.Entry(UnitFacts.CordHeldBy),
            u.EntryOrNotYet(UnitFacts.CordConfirmedBy))));
    }

    /// <summary>Whether what was read of cords was of a unit that was replaced since.</summary>
    private static bool AreOfAnother(Unit unit) => StepList.Find("cords-safe") is { } step && AskedAgain.Since(unit, step) is not null;
}

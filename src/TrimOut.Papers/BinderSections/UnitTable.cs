using TrimOut.Core.Facts;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every unit as it hangs.</summary>
internal static class UnitTable
{
    public static Section Section { get; } = new("units", "The units", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var units = data.House.Units;
        to.Table(["Unit", "Room", "Kind", "Width", "Height", "Mount", "Lead side", "Power"], units.Select(u => Row(
            u.Tag, (u.Window.Room?.FullName).OrDash(), u.Entry(UnitFacts.Kind),
            u.Entry(UnitFacts.OrderWidth), u.Entry(UnitFacts.OrderHeight), u.Window.Entry(WindowFacts.Mount),
            u.Entry(UnitFacts.LeadSide), u.Entry(UnitFacts.Power))), "No units yet.");
        if (units.IsEmpty)
            return;

        to.Heading(3, "Finish, order and serial");
        to.Table(["Unit", "Fabric", "Colour", "Opacity", "Head cover", "Ordered", "Maker's number", "Serial"], units.Select(u => Row(
            u.Tag, u.Entry(UnitFacts.Fabric), u.Entry(UnitFacts.Colour), u.Entry(UnitFacts.Opacity),
            u.Entry(UnitFacts.HeadCover), u.EntryOrNotYet(UnitFacts.OrderedOn), u.EntryOrNotYet(UnitFacts.Acknowledgement),
            u.EntryOrNotYet(UnitFacts.Serial))));
    }
}

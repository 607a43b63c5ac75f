using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Every unit as it hangs.</summary>
internal static class UnitTable
{
    public static Section Section { get; } = new("The units", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var units = data.House.Units;
        to.Table(["Unit", "Room", "Kind", "Width", "Height", "Mount", "Lead side", "Power"], units.Select(u => Row(
            u.Tag, (u.Window.Room?.Name).OrDash(), u.Show(UnitFacts.Kind).OrDash(),
            u.Show(UnitFacts.OrderWidth).OrDash(), u.Show(UnitFacts.OrderHeight).OrDash(), u.Window.Show(WindowFacts.Mount).OrDash(),
            u.Show(UnitFacts.LeadSide).OrDash(), u.Show(UnitFacts.Power).OrDash())), "No units yet.");
        if (units.IsEmpty)
            return;

        to.Heading(3, "Finish, order and serial");
        to.Table(["Unit", "Fabric", "Colour", "Opacity", "Head cover", "Ordered", "Maker's number", "Serial"], units.Select(u => Row(
            u.Tag, u.Show(UnitFacts.Fabric).OrDash(), u.Show(UnitFacts.Colour).OrDash(), u.Show(UnitFacts.Opacity).OrDash(),
            u.Show(UnitFacts.HeadCover).OrDash(), u.Show(UnitFacts.OrderedOn).OrNotYet(), u.Show(UnitFacts.Acknowledgement).OrNotYet(), u.Show(UnitFacts.Serial).OrNotYet())));

        to.Heading(3, "Notes and pictures");
        to.Table(["Unit", "Note", "Picture"], units.Select(NoteRow).OfType<Inline[]>());
    }

    private static Inline[]? NoteRow(Unit unit)
    {
        string[] notes = [unit.Window.Show(WindowFacts.Note), unit.Show(UnitFacts.Note)];
        string[] photos = [unit.Window.Show(WindowFacts.Photo), unit.Show(UnitFacts.Photo)];
        return notes.Concat(photos).All(t => t.Length == 0) ? null : Row(unit.Tag, notes.JoinOrDash("; "), photos.JoinOrDash("; "));
    }
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>What is still to be mended, what may stay and why, and what could not be checked.</summary>
internal static class OpenItems
{
    public static Section Section { get; } = new("open_items", "Open items", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var (house, report) = (data.House, data.Report);
        to.Facts("What", "Entry",
            ("Findings still open", Number(report.Findings.Count(f => f.Open))),
            ("Of these stops", Number(report.OpenStops.Count())),
            ("Findings waived", Number(report.Findings.Count(f => !f.Open))),
            ("Not checked, because details are missing", Number(report.Missing.Length)),
            ("Agreed with the owner", new JobItself(house).EntryOrNotYet(HouseFacts.OpenItemsAgreed)));

        to.Heading(3, "Findings");
        to.Table(["Where", "How bad", "What is wrong", "How to fix it"], report.Findings.Where(f => f.Open).Select(f => Row(
            NameOf(house, f.Subject), Ours(f.Check.Severity.ToString()), Said(f.Found.Message, house), Said(f.Found.Mend, house))));

        to.Heading(3, "Waived, with the reason");
        to.Table(["Where", "What", "Reason", "Initials", "When"], report.Findings.Where(f => !f.Open).Select(f => Row(
            NameOf(house, f.Subject), Said(f.Found.Message, house), f.Waiver!.Reason.OrDash(), f.Waiver.Initials.OrDash(), WaivedOn(f.Waiver))));

        to.Heading(3, "Punch items");
        to.Table(["Where", "What", "Phase", "State", "Picture"], house.PunchItems.OrderBy(p => p.Done).Select(p => Row(
            p.About is { } about ? NameOf(house, about) : Dash, p.Name, p.Phase is { } phase ? Ours(phase.Full()) : Dash,
            Ours(p.Done ? "done" : "open"), p.Entry(PunchFacts.Photo))));
    }

    private static Inline WaivedOn(Waiver waiver) => waiver.Item.Latest(WaiverFacts.Reason.Name) is { } head ? head.At.OnPaper() : Dash;
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Papers.Photos;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>What the checks find, with its figures and its mend; who waived what; what could not be checked; punch items that are done.</summary>
internal static class Findings
{
    public static Section Section { get; } = new("findings", "Findings", Write) { NotForOwner = true };

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var (house, report) = (data.House, data.Report);
        to.Table(["Where", "How bad", "What is wrong", "How to fix it"], report.Findings.Where(f => f.Open).Select(f => Row(
            NameOf(house, f.Subject), Ours(f.Check.Severity.ToString()), SheetMarks.Said(data, f), Said(f.Found.Mend, house))),
            "Nothing that was checked is wrong.");
        if (!report.Missing.IsEmpty)
            to.Say($"Not checked, because details are missing: {report.Missing.Length}.");

        if (report.Findings.Any(f => !f.Open))
        {
            to.Heading(3, "Waived");
            to.Table(["Where", "What", "Initials", "When"], report.Findings.Where(f => !f.Open).Select(f => Row(
                NameOf(house, f.Subject), SheetMarks.Said(data, f), f.Waiver!.Initials.OrDash(), WaivedOn(f.Waiver))));
        }

        if (house.PunchItems.Any(p => p.Done))
        {
            to.Heading(3, "Punch items that are done");
            to.Filled(["What", "Where", "Phase"], house.PunchItems.Where(p => p.Done).Select(p => Row(
                p.Name, p.About is { } about ? NameOf(house, about) : Dash, p.Phase is { } phase ? Ours(phase.Full()) : Dash)));
            PhotoPages.WritePunch(to, data, house.PunchItems.Where(p => p.Done));
        }
    }

    private static Inline WaivedOn(Waiver waiver) => waiver.Item.Latest(WaiverFacts.Reason.Name) is { } head ? head.At.OnPaper() : Dash;
}

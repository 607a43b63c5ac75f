using TrimOut.Core.Checks;
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
            ("Not checked, because facts are missing", Number(report.Missing.Length)),
            ("Agreed with the owner", new JobItself(house).EntryOrNotYet(HouseFacts.OpenItemsAgreed)));

        to.Heading(3, "Findings");
        Findings(to, data, [.. report.Findings.Where(f => f.Open)]);

        to.Heading(3, "Waived, with the reason");
        to.Table(["Where", "What", "Reason", "Initials", "When"], report.Findings.Where(f => !f.Open).Select(f => Row(
            house.NameOnPaper(f.Subject), to.Words.IsEnglish ? f.Found.Message.In(data.House) : Ours(f.Check.Title),
            f.Waiver!.Reason.OrDash(), f.Waiver.Initials.OrDash(), WaivedOn(f.Waiver))));

        to.Heading(3, "Punch items");
        to.Table(["Where", "What", "Phase", "State", "Picture"], house.PunchItems.OrderBy(p => p.Done).Select(p => Row(
            p.About is { } about
                ? house.NameOnPaper(about)
                : Dash, p.Name, p.Phase is { } phase
                ? Ours(phase.Full())
                : Dash, Ours(p.Done ? "done" : "open"), p.Entry(PunchFacts.Photo))));
    }

    /// <summary>
    /// The sentences with the figures are made in English. In another language a finding is the fault in a few words, with the name that the crew finds it by.
    /// </summary>
    private static void Findings(MarkdownWriter to, PaperData data, List<Finding> open)
    {
        if (to.Words.IsEnglish)
        {
            to.Table(["Where", "How bad", "What is wrong", "What mends it"], open.Select(f => Row(
                data.House.NameOnPaper(f.Subject), Ours(f.Check.Severity.ToString()), f.Found.Message.In(data.House), f.Found.Mend.In(data.House))));
            return;
        }
        to.Say("Figures and mends stand on the crew's punch list, under the name of the check.");
        to.Table(["Where", "How bad", "What is wrong", "Name of the check"], open.Select(f => Row(
            data.House.NameOnPaper(f.Subject), Ours(f.Check.Severity.ToString()), Ours(f.Check.Title), f.Check.Id)));
    }

    private static Inline WaivedOn(Waiver waiver) => waiver.Item.Latest(WaiverFacts.Reason.Name) is { } head ? head.At.OnPaper() : Dash;
}

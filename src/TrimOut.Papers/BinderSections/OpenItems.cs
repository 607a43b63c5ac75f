using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Photos;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>What is still to be done and what may stay, in the owner's words; the figures stand with the findings in part two.</summary>
internal static class OpenItems
{
    public static Section Section { get; } = new("open_items", "Open items", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var (house, report) = (data.House, data.Report);
        to.Say($"Agreed with the owner: {new JobItself(house).EntryOrNotYet(HouseFacts.OpenItemsAgreed)}");
        to.Heading(3, "Still to be fixed");
        to.Table(["What", "Where"], report.Findings.Where(f => f.Open).GroupBy(f => f.Check.Title).Select(f => Row(Ours(f.Key), Where(f, house))),
            report.Waiting.None ? "None." : "None that is known.");
        Inline?[] waiting =
        [
            report.Missing.IsEmpty ? null : Ours($"Checks of the work that could not be made yet, because details are still missing: {report.Missing.Length}.")
                + Ours("Nobody knows yet what they would find."),
            SheetMarks.Passing(data),
        ];
        if (!report.Waiting.None)
        {
            to.Heading(3, "Still to be checked");
            to.Say(Join(" ", [.. waiting.OfType<Inline>()]));
        }

        if (report.Findings.Any(f => !f.Open))
        {
            to.Heading(3, "Stays as it is");
            to.Table(["What", "Where", "Because"], report.Findings.Where(f => !f.Open).GroupBy(f => (f.Check.Title, f.Waiver!.Reason)).Select(f =>
                Row(Ours(f.Key.Title), Where(f, house), f.Key.Reason.OrDash())));
        }

        if (house.PunchItems.Any(p => p.Open))
        {
            to.Heading(3, "Punch items");
            to.Filled(["What", "Where"], house.PunchItems.Where(p => p.Open).Select(p => Row(
                p.Name, p.About is { } about ? NameOf(house, about) : Dash)));
            PhotoPages.WritePunch(to, data, house.PunchItems.Where(p => p.Open));
        }
    }

    private static Inline Where(IEnumerable<Finding> findings, House house) =>
        Join(", ", [.. findings.Select(f => f.Subject).DistinctBy(s => s.Id).Select(s => NameOf(house, s))]);
}

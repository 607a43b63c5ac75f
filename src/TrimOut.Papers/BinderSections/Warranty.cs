using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.InService;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>Who answers for what, how long, and whom to call: as it was typed in; only the last day is worked out, where the term can be read.</summary>
internal static class Warranty
{
    public static Section Section { get; } = new("warranty", "Warranty", Write);

    private static void Write(MarkdownWriter to, PaperData data)
    {
        var job = new JobItself(data.House);
        to.Say("As it was agreed and noted; the papers that came with the house and with the units govern. When you call, " +
            "have the unit's tag and serial at hand: they stand in part two.");
        Fact[] ofJob = [HouseFacts.WarrantyTerm, HouseFacts.WarrantyFrom, HouseFacts.WarrantyCovers];
        var ofCrew = ofJob.Any(f => job.Shown(f) is not null);
        var kinds = KindsInUse.Of(data.House)
            .Where(k => k.Shown(CoveringKindFacts.WarrantyTerm) is not null || k.Shown(CoveringKindFacts.WarrantyCovers) is not null).ToList();
        if (!ofCrew && kinds.Count == 0)
            to.Say("Nothing was noted.");
        if (ofCrew)
        {
            to.Heading(3, "The crew's work").Known("About", "Entry", "Nothing was noted.",
                ("How long", job.Entry(HouseFacts.WarrantyTerm)),
                ("Runs from", job.Entry(HouseFacts.WarrantyFrom)),
                ("Last day", DueInService.CrewUntil(data.House)?.OnPaper() ?? Inline.Dash),
                ("Covers", job.Entry(HouseFacts.WarrantyCovers)));
        }
        if (kinds.Count > 0)
        {
            to.Heading(3, "The units, by kind").Filled(["Kind", "How long", "Last day", "Covers"],
                kinds.Select(k => Row(k.OnPaper(), k.Entry(CoveringKindFacts.WarrantyTerm),
                    DueInService.MakerUntil(data.House, k.Item)?.OnPaper() ?? Inline.Dash, k.Entry(CoveringKindFacts.WarrantyCovers))), "Nothing was noted.");
        }
    }
}

using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.CrewPapers;

/// <summary>What whoever drills is to know of old paint.</summary>
internal static class OldPaint
{
    /// <summary>
    /// How old the paint is; where it may hold lead, or nobody wrote how old it is, that it is tested first, or what the test said and what is to be done
    /// before anybody drills.
    /// </summary>
    public static Inline Said(PaperData data)
    {
        var job = new JobItself(data.House);
        if (IsFree(job))
            return Ours($"Oldest paint: {job.EntryOrBlank(HouseFacts.OldestPaint)}.");
        if (job.Item.Get(HouseFacts.PaintTested) is null)
        {
            return Ours($"Oldest paint: {job.EntryOrBlank(HouseFacts.OldestPaint)}. Paint from before {OldPaintUntested.FreeFrom} may hold lead: have it " +
                $"tested before anybody drills or sands; the local rules say who may. Tested: {Blank}.");
        }
        var tested = Ours($"Oldest paint: {job.EntryOrBlank(HouseFacts.OldestPaint)}. Tested for lead: {job.EntryOrBlank(HouseFacts.PaintTested)}.");
        return data.Report.Findings.FirstOrDefault(f => f.Check.Id == Check.Info.Id) is { } found
            ? tested + Strong(Inline.Said(found.Found.Mend, data.House)) : tested;
    }

    /// <summary>The same, and nothing where the paint is free of lead by its year.</summary>
    public static IEnumerable<Inline> WhereItMayHoldLead(PaperData data) => IsFree(new JobItself(data.House)) ? [] : [Said(data)];

    private static readonly OldPaintUntested Check = new();

    private static bool IsFree(JobItself job) => job.Item.Get(HouseFacts.OldestPaint) >= OldPaintUntested.FreeFrom;
}

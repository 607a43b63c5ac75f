using TrimOut.Core.Checks.Safety;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.CrewPapers;

/// <summary>What whoever drills is to know of old paint.</summary>
internal static class OldPaint
{
    /// <summary>How old the paint is; where it may hold lead, or nobody wrote how old it is, that it is tested first, and what the test said.</summary>
    public static Inline Said(House house) => new JobItself(house) is var job && IsFree(job)
        ? Ours($"Oldest paint: {job.EntryOrBlank(HouseFacts.OldestPaint)}.")
        : Ours($"Oldest paint: {job.EntryOrBlank(HouseFacts.OldestPaint)}. Paint from before {OldPaintUntested.FreeFrom} may hold lead: have it tested " +
            $"before anybody drills or sands; the local rules say who may. Tested: {job.EntryOrBlank(HouseFacts.PaintTested)}.");

    /// <summary>The same, and nothing where the paint is free of lead by its year.</summary>
    public static IEnumerable<Inline> WhereItMayHoldLead(House house) => IsFree(new JobItself(house)) ? [] : [Said(house)];

    private static bool IsFree(JobItself job) => job.Item.Get(HouseFacts.OldestPaint) >= OldPaintUntested.FreeFrom;
}

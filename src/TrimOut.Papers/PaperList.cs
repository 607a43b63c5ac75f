using TrimOut.Papers.CrewPapers;
using TrimOut.Papers.Labels;
using TrimOut.Papers.OwnerPapers;
using TrimOut.Papers.TradePapers;

namespace TrimOut.Papers;

/// <summary>Every paper that TrimOut can write, those of the owner first, then those of the work in the order in which a job needs them.</summary>
public static class PaperList
{
    /// <summary>All papers.</summary>
    public static IReadOnlyList<Paper> All { get; } =
    [
        Binder.Paper, KitchenCard.Paper, PanelDoorSheet.Paper, SunSheet.Paper, WorkPlan.Paper, WalkSheet.Paper, PullSheet.Paper, LabelSheet.Paper,
        TestRecord.Paper, MeasureForm.Paper, PartsList.Paper, OrderSheet.Paper, ReceivingList.Paper, HangSheet.Paper, PanelSchedule.Paper, ServiceForm.Paper,
    ];

    /// <summary>The paper with that id; null when there is none.</summary>
    public static Paper? Find(string id) => All.FirstOrDefault(p => p.Id == id);
}

using TrimOut.Papers.CrewPapers;
using TrimOut.Papers.Labels;
using TrimOut.Papers.TradePapers;

namespace TrimOut.Papers;

/// <summary>Every paper that TrimOut can write, in the order in which a job needs them.</summary>
public static class PaperList
{
    /// <summary>All papers.</summary>
    public static IReadOnlyList<Paper> All { get; } =
    [
        WalkSheet.Paper, PullSheet.Paper, LabelSheet.Paper, TestRecord.Paper, OrderSheet.Paper,
        ReceivingList.Paper, HangSheet.Paper, PanelSchedule.Paper, Binder.Paper,
    ];

    /// <summary>The paper with that id; null when there is none.</summary>
    public static Paper? Find(string id) => All.FirstOrDefault(p => p.Id == id);
}

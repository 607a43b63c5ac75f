using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.TradePapers;

/// <summary>By which maker's sheet, in which edition, each part that is used was built, and who checked its values against that sheet.</summary>
internal static class SheetsInUse
{
    public static Section Section { get; } = new("sheets_used", "Makers' sheets", Write);

    private static void Write(MarkdownWriter to, PaperData data) =>
        to.Table(["Part", "Maker's sheet", "Edition", "Checked by", "Checked on"],
            PartsInUse.Of(data.House).Select(Of), "No part of the kit is used yet.");

    private static Inline[] Of(KitSheet part)
    {
        var kind = part.Item.Kind;
        var (by, on) = PartSheet.CheckedLast(part.Item);
        return Row(part.OnPaper(), part.EntryOrNotYet(AboutSheet.Of(kind, AboutSheet.Sheet)), part.EntryOrNotYet(AboutSheet.Of(kind, AboutSheet.Edition)),
            PartSheet.NotChecked(part.Item) is ( > 0 and var open, var there) ? NotChecked(by, open, there).Marked(true) : by.OrDash(), on.OrDash());
    }

    private static Inline NotChecked(string? by, int open, int there) =>
        by is null ? Ours($"nobody: {open} of {there} not checked") : Ours($"{by}; {open} of {there} not checked");
}

using System.Globalization;
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
        to.Table(["Part", "Maker's sheet", "Edition", "Checked by", "Checked on", "Values not checked"],
            Parts(data.House).Select(p => Of(data.House, p)), "No part of the kit is used yet.");

    private static Inline[] Of(House house, KitSheet part)
    {
        var kind = part.Item.Kind;
        var about = PartSheet.Of(house, part.Item).About;
        return Row(part.OnPaper(), part.EntryOrNotYet(AboutSheet.Of(kind, AboutSheet.Sheet)), part.EntryOrNotYet(AboutSheet.Of(kind, AboutSheet.Edition)),
            about.GetValueOrDefault(AboutSheet.HeldBy).OrDash(),
            about.TryGetValue(AboutSheet.HeldOn, out var on) && DateOnly.TryParseExact(on, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
                ? day.OnPaper() : Dash,
            Number(SheetValues.NotHeldIn(part.Item).Count()));
    }

    /// <summary>Each part that something in the house is made of, once, in the order of the kit; no head cover is no part.</summary>
    private static IEnumerable<KitSheet> Parts(House house) =>
        new IEnumerable<KitSheet?>[]
        {
            house.Units.Select(u => u.Kind), house.Runs.Select(r => r.Cable), house.Units.Select(u => u.HeadCover is { IsNone: false } cover ? cover : null),
            house.Panels.Select(p => p.Type), house.Hubs.Select(h => h.Type), house.Remotes.Select(r => r.Type),
        }.SelectMany(s => s).OfType<KitSheet>().DistinctBy(p => p.Id).OrderBy(p => p.Item.Kind).ThenBy(p => p.Item.Place);
}

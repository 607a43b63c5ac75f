using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Papers.Writing;

namespace TrimOut.Papers.BinderSections;

/// <summary>The kinds of covering that hang in a house.</summary>
internal static class KindsInUse
{
    /// <summary>Each once, in the order of the kit.</summary>
    public static IEnumerable<CoveringKind> Of(House house) =>
        house.Units.Select(u => u.Kind).OfType<CoveringKind>().DistinctBy(k => k.Id).OrderBy(k => k.Item.Place);

    /// <summary>Rows of a table: some facts of the kinds, kinds of which all are the same in one row; none of kinds of which nothing was noted.</summary>
    public static IEnumerable<Inline[]> Alike(House house, params Fact[] facts) =>
        from kind in Of(house)
        where facts.Any(f => kind.Shown(f) is not null)
        group kind by string.Join('\n', facts.Select(f => kind.Show(f))) into alike
        select (Inline[])[Inline.Join(", ", [.. alike.Select(k => k.OnPaper())]), .. facts.Select(f => alike.First().Entry(f))];
}

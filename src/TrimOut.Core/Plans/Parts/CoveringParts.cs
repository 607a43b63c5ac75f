using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Units by kind, centre supports, head covers.</summary>
internal static class CoveringParts
{
    public static IEnumerable<PartLine> Of(House house)
    {
        foreach (var kind in Chosen(house, UnitFacts.Kind))
        {
            var sheet = kind.First().Kind!;
            yield return Line(sheet.Name, kind.Count(), $"units of this kind: {Tags(kind)}");
            if (sheet[CoveringKindFacts.CentreFrom] is not { } from)
            {
                yield return new PartLine(PartGroup.Coverings, $"{sheet.Name}: center support", null, "", "the sheet does not say from which width on");
                continue;
            }
            var unknown = kind.Where(u => (u.Item.Get(UnitFacts.OrderWidth) ?? u.PartWidth) is null).ToList();
            var wide = kind.Where(u => u.NeedsCentreSupport).ToList();
            if (wide.Count + unknown.Count > 0)
            {
                var line = Line($"{sheet.Name}: center support", unknown.Count > 0 && wide.Count == 0 ? null : wide.Count,
                    $"units {from.Show(house.DisplayUnits)} wide or wider{(wide.Count > 0 ? ": " + Tags(wide) : "")}{Open(unknown, "no width yet")}");
                yield return line with { AtLeast = unknown.Count > 0 };
            }
        }
        foreach (var cover in Chosen(house, UnitFacts.HeadCover).Where(c => c.First().HeadCover is { IsNone: false }))
            yield return Line(cover.First().HeadCover!.Name, cover.Count(), $"head cover of {Tags(cover)}");
        var (without, bare) = (house.Units.Where(u => u.Kind is null).ToList(), house.Units.Where(u => u.HeadCover is null).ToList());
        if (without.Count > 0)
            yield return new PartLine(PartGroup.Coverings, "Units without a kind", null, "", $"{without.Count}: {Tags(without)}");
        if (bare.Count > 0)
            yield return new PartLine(PartGroup.Coverings, "Head covers not chosen", null, "", $"{bare.Count}: {Tags(bare)}");
    }

    private static PartLine Line(string part, int? count, string from) => new(PartGroup.Coverings, part, count, "", from);

    private static string Tags(IEnumerable<Unit> units) => HouseParts.Names(units.Select(u => u.Tag));

    private static string Open(List<Unit> units, string why) => units.Count == 0 ? "" : $"; {why}: {Tags(units)}";

    /// <summary>Units by the part of the kit that a fact chooses, in the order of the kit.</summary>
    private static IEnumerable<IGrouping<string, Unit>> Chosen(House house, Fact<ItemRef> fact) =>
        house.Units.Where(u => u.Item.Get(fact) is { } part && house.Find(part.Id) is { Removed: false }).GroupBy(u => u.Item.Get(fact)!.Value.Id)
            .OrderBy(g => house.Find(g.Key)!.Place);
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>What the sheets count for each unit and each run, and the labels of both cable ends.</summary>
internal static class SmallParts
{
    private static readonly Message CableLabel = new("Cable label");
    private static readonly Message BothEnds = new("both ends of {0}");
    private static readonly Message OfSheet = new("{0}: {1}");
    private static readonly Message SaysNothing = new("the sheet of {0} says nothing of them");
    private static readonly Message ForEach = new("{0} for each of {1}");

    public static IEnumerable<PartLine> Of(House house)
    {
        var kinds = house.Units.Select(u => u.Item.Get(UnitFacts.Kind));
        foreach (var line in Counted(house, ItemKind.CoveringKind, CoveringKindFacts.PartsPerUnit, [.. kinds], PartWords.ManyUnits))
            yield return line;
        var cables = house.Runs.Select(r => r.Item.Get(RunFacts.Cable));
        foreach (var line in Counted(house, ItemKind.CableType, CableTypeFacts.PartsPerRun, [.. cables], PartWords.ManyRuns))
            yield return line;
        if (house.Runs.Length > 0)
            yield return new PartLine(PartGroup.SmallParts, CableLabel, 2 * house.Runs.Length, "", BothEnds.With(PartWords.ManyRuns(house.Runs.Length)));
    }

    private static IEnumerable<PartLine> Counted(House house, ItemKind kind, Fact<PartCounts> fact, IReadOnlyList<ItemRef?> chosen, Func<int, Arg> each)
    {
        foreach (var sheet in house.ItemsOf(kind))
        {
            var uses = chosen.Count(c => c?.Id == sheet.Id);
            if (uses == 0)
                continue;
            var name = PartWords.OfKit(house.NameOf(sheet));
            if (sheet.Get(fact) is not { } parts)
            {
                yield return new PartLine(PartGroup.SmallParts, OfSheet.With(name, Arg.Label(fact)), null, "", SaysNothing.With(name));
                continue;
            }
            foreach (var (count, part) in parts.Parts)
            {
                yield return new PartLine(PartGroup.SmallParts, OfSheet.With(name, Arg.Typed(part)), count * uses, "", ForEach.With(count, each(uses)))
                    .By(sheet, fact);
            }
        }
    }
}

using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Parts;

/// <summary>What the sheets count for each unit and each run, and the labels of both cable ends.</summary>
internal static class SmallParts
{
    public static IEnumerable<PartLine> Of(House house)
    {
        var kinds = house.Units.Select(u => u.Item.Get(UnitFacts.Kind));
        foreach (var line in Counted(house, ItemKind.CoveringKind, CoveringKindFacts.PartsPerUnit, [.. kinds], "unit"))
            yield return line;
        foreach (var line in Counted(house, ItemKind.CableType, CableTypeFacts.PartsPerRun, [.. house.Runs.Select(r => r.Item.Get(RunFacts.Cable))], "run"))
            yield return line;
        if (house.Runs.Length > 0)
            yield return new PartLine(PartGroup.SmallParts, "Cable label", 2 * house.Runs.Length, "",
                $"both ends of {HouseParts.Many(house.Runs.Length, "run")}");
    }

    private static IEnumerable<PartLine> Counted(House house, ItemKind kind, Fact<PartCounts> fact, IReadOnlyList<ItemRef?> chosen, string each)
    {
        foreach (var sheet in house.ItemsOf(kind))
        {
            var uses = chosen.Count(c => c?.Id == sheet.Id);
            if (uses == 0)
                continue;
            var name = house.NameOf(sheet);
            if (sheet.Get(fact) is not { } parts)
            {
                yield return new PartLine(PartGroup.SmallParts, $"{name}: {fact.Label.ToLowerInvariant()}", null, "",
                    $"the sheet of {name} says nothing of them");
                continue;
            }
            foreach (var (count, part) in parts.Parts)
                yield return new PartLine(PartGroup.SmallParts, $"{name}: {part}", count * uses, "",
                    $"{NumberText.Plain(count)} for each of {HouseParts.Many(uses, each)}");
        }
    }
}

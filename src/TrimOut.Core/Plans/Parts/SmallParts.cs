using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>What the sheets count for each unit and each run, and the labels of both cable ends.</summary>
internal static partial class SmallParts
{
    private static readonly Message CableLabel = new("Cable label");
    private static readonly Message BothEnds = new("both ends of {0}");
    private static readonly Message OfSheet = new("{0}: {1}");
    private static readonly Message SaysNothing = new("the sheet of {0} says nothing of them");
    private static readonly Message ForEach = new("{0} for each of {1}");

    public static IEnumerable<PartLine> Of(House house)
    {
        var kinds = house.Units.ToLookup(u => u.Item.Get(UnitFacts.Kind)?.Id, u => u.Item);
        foreach (var line in Counted(house, ItemKind.CoveringKind, CoveringKindFacts.PartsPerUnit, kinds, PartWords.ManyUnits))
            yield return line;
        var cables = house.Runs.ToLookup(r => r.Item.Get(RunFacts.Cable)?.Id, r => r.Item);
        foreach (var line in Counted(house, ItemKind.CableType, CableTypeFacts.PartsPerRun, cables, PartWords.ManyRuns))
            yield return line;
        if (house.Runs.Length > 0)
            yield return new PartLine(PartGroup.SmallParts, CableLabel, 2 * house.Runs.Length, "", BothEnds.With(PartWords.ManyRuns(house.Runs.Length)))
            {
                NeededIn = Phase.RoughIn,
                Name = CableLabel.English,
                Items = [.. house.Runs.Select(r => new CountedItem(r.Item, 2))],
            };
    }

    private static IEnumerable<PartLine> Counted(House house, ItemKind kind, Fact<PartCounts> fact, ILookup<string?, Item> chosen, Func<int, Arg> each)
    {
        foreach (var sheet in house.ItemsOf(kind))
        {
            var uses = chosen[sheet.Id].Count();
            if (uses == 0)
                continue;
            var name = PartWords.OfKit(house.NameOf(sheet));
            if (sheet.Get(fact) is not { } parts)
            {
                yield return new PartLine(PartGroup.SmallParts, OfSheet.With(name, Arg.Label(fact)), null, "", SaysNothing.With(name))
                {
                    NeededIn = PhaseOf(kind, ""),
                };
                continue;
            }
            foreach (var (count, part) in parts.Parts)
            {
                yield return new PartLine(PartGroup.SmallParts, OfSheet.With(name, Arg.Typed(part)), count * uses, "", ForEach.With(count, each(uses)))
                    .By(sheet, fact) with
                { NeededIn = PhaseOf(kind, part), Name = part, Items = [.. chosen[sheet.Id].Select(i => new CountedItem(i, count))] };
            }
        }
    }

    /// <summary>
    /// What a run needs besides its cable is needed as it is pulled, such as nail plates; what its joints are made of once there is power. By a name that says
    /// neither it is called for with the cable, which is never too late (common practice, no published source).
    /// </summary>
    private static Phase PhaseOf(ItemKind sheet, string part) => sheet != ItemKind.CableType ? Phase.Hang : Joint().IsMatch(part) ? Phase.Power : Phase.RoughIn;

    [GeneratedRegex("splice|connector|joint|ferrule|terminal|verbinder|klemme|h\u00fclse|conector|empalme|borne|puntera",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Joint();
}

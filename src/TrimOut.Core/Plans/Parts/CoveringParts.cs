using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Units by kind, centre supports, head covers.</summary>
internal static class CoveringParts
{
    private static readonly Message OfThisKind = new("units of this kind: {0}");
    private static readonly Message CentreSupport = new("{0}: center support");
    private static readonly Message SheetDoesNotSay = new("the sheet does not say from which width on");
    private static readonly Message WideOrWider = new("units {0} wide or wider");
    private static readonly Message WideOrWiderNamed = new("units {0} wide or wider: {1}");
    private static readonly Message NoWidth = new("no width yet");
    private static readonly Message HeadCoverOf = new("head cover of {0}");
    private static readonly Message WithoutKind = new("Units without a kind");
    private static readonly Message NotChosen = new("Head covers not chosen");

    public static IEnumerable<PartLine> Of(House house)
    {
        foreach (var kind in Chosen(house, UnitFacts.Kind))
        {
            var sheet = kind.First().Kind!;
            yield return Line(PartWords.Called(sheet.Name), kind.Count(), OfThisKind.With(Tags(kind)));
            var support = CentreSupport.With(PartWords.OfKit(sheet.Name));
            if (sheet[CoveringKindFacts.CentreFrom] is not { } from)
            {
                yield return new PartLine(PartGroup.Coverings, support, null, "", SheetDoesNotSay);
                continue;
            }
            var unknown = kind.Where(u => u.NeedsCentreSupport is null).ToList();
            var wide = kind.Where(u => u.NeedsCentreSupport == true).ToList();
            if (wide.Count + unknown.Count > 0)
            {
                var line = Line(support, unknown.Count > 0 && wide.Count == 0 ? null : wide.Count,
                    (wide.Count > 0 ? WideOrWiderNamed.With(from, Tags(wide)) : WideOrWider.With(from)).But(NoWidth, unknown.Select(u => u.Tag)));
                yield return line.By(sheet.Item, CoveringKindFacts.CentreFrom) with { AtLeast = unknown.Count > 0 };
            }
        }
        foreach (var cover in Chosen(house, UnitFacts.HeadCover).Where(c => c.First().HeadCover is { IsNone: false }))
            yield return Line(PartWords.Called(cover.First().HeadCover!.Name), cover.Count(), HeadCoverOf.With(Tags(cover)));
        var (without, bare) = (house.Units.Where(u => u.Kind is null).ToList(), house.Units.Where(u => u.HeadCover is null).ToList());
        if (without.Count > 0)
            yield return new PartLine(PartGroup.Coverings, WithoutKind, null, "", PartWords.Counted(without.Count, without.Select(u => u.Tag)));
        if (bare.Count > 0)
            yield return new PartLine(PartGroup.Coverings, NotChosen, null, "", PartWords.Counted(bare.Count, bare.Select(u => u.Tag)));
    }

    private static PartLine Line(Sentence part, int? count, Sentence from) => new(PartGroup.Coverings, part, count, "", from);

    private static Arg Tags(IEnumerable<Unit> units) => PartWords.Names(units.Select(u => u.Tag));

    /// <summary>Units by the part of the kit that a fact chooses, in the order of the kit.</summary>
    private static IEnumerable<IGrouping<string, Unit>> Chosen(House house, Fact<ItemRef> fact) =>
        house.Units.Where(u => u.Item.Get(fact) is { } part && house.Find(part.Id) is { Removed: false }).GroupBy(u => u.Item.Get(fact)!.Value.Id)
            .OrderBy(g => house.Find(g.Key)!.Place);
}

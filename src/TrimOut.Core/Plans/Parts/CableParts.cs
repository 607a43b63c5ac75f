using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Cable by type, and the boxes that the cut plan asks for.</summary>
internal static class CableParts
{
    private static readonly Message Lengths = new("legs, allowance and both tails of {0}");
    private static readonly Message Allowance = new("allowance {0}");
    private static readonly Message PanelTail = new("tail at the panel {0}");
    private static readonly Message BegunBy = new("{0}: what the program began with, typed by nobody");
    private static readonly Message NoLength = new("no length yet");
    private static readonly Message TooLong = new("longer than its cable may be, and not to be cut");
    private static readonly Message NotListed = new("not listed for where it goes, and not to be cut");
    private static readonly Message LessAllowance = new("less of the allowance, for the cable may be no longer");
    private static readonly Message SparesBeside = new("spare cables beside it not counted");
    private static readonly Message NoneMayBeCut = new("no run that waits may be cut yet");
    private static readonly Message ForThoseThatMayBeCut = new("cut plan for those that may be cut, {0}");
    private static readonly Message WithoutCable = new("Runs without a cable");
    private static readonly Message ToBuy = new("{0}: boxes to buy");
    private static readonly Message NothingWaits = new("no run of it waits to be cut");
    private static readonly Message NoneHasALength = new("no run that waits to be cut has a length");
    private static readonly Message NotMeasured = new("{0} without what is in boxes on hand that nobody measured");
    private static readonly Message NotKnownHowMuch = new("it is not known how much is left in");
    private static readonly Message ForThoseKnown = new("cut plan for those whose length is known, {0}");
    private static readonly Message Planned = new("cut plan for what is not pulled yet, {0}; on hand {1}");
    private static readonly Message InANewOne = new("{0} in a new one");
    private static readonly Message NoPlanNeedsFewer = new("no plan needs fewer");
    private static readonly Message MayBePossible = new("it may be possible with {0}");

    public static IEnumerable<PartLine> Of(House house, IEnumerable<PlannedCable> plans)
    {
        var (unit, inches) = house.DisplayUnits == DisplayUnits.Inches ? ("ft", true) : ("m", false);
        foreach (var (cuts, plan) in plans)
        {
            var runs = house.Runs.Where(r => r.Cable?.Id == cuts.Cable.Id).ToList();
            var held = cuts.Held.Select(r => r.Id).ToHashSet();
            var known = runs.Where(r => r.Needed is not null && !held.Contains(r.Id)).ToList();
            var length = known.Aggregate(Length.Zero, (sum, r) => sum + r.Needed!.Value);
            var open = runs.Except(known).Where(r => !held.Contains(r.Id)).ToList();
            if (runs.Count > 0)
            {
                var line = new PartLine(PartGroup.Cable, PartWords.Called(cuts.Cable.Name),
                    known.Count == 0 ? null : Math.Ceiling(Shown(length)), unit,
                    Lengths.With(PartWords.ManyRuns(known.Count)).But(NoLength, open.Select(r => r.Name))
                        .But(TooLong, HeldBy(cuts, HeldBack.TooLong)).But(NotListed, HeldBy(cuts, HeldBack.NotListed))
                        .But(LessAllowance, known.Where(r => r.ShownBeforeLimit is not null).Select(r => r.Name))
                        .But(SparesBeside, runs.Where(r => r.Item.Get(RunFacts.SpareCables) > 0).Select(r => r.Name)));
                if (known.Count > 0 && TypedByNobody(house, known) is { } begun)
                    line = line with { CountedFrom = line.CountedFrom.And(begun) };
                yield return (line with { AtLeast = open.Count + held.Count > 0, Items = [.. runs.Select(Counted)] })
                    .By(runs.SelectMany(r => UncheckedValues.Read(r.Unit, u => (HouseCuts.WhyHeld(u.Run!), u.Run!.Needed)).Unchecked));
            }
            yield return Boxes(cuts, plan, inches).By(cuts.Cable.Item, CableTypeFacts.BoxLength);

            CountedItem Counted(HomeRun run) => new(run.Item, run.Needed is { } needed && !held.Contains(run.Id) ? Shown(needed) : null);
        }
        var without = house.Runs.Where(r => r.Cable is null).ToList();
        if (without.Count > 0)
            yield return new PartLine(PartGroup.Cable, WithoutCable, null, "", PartWords.Counted(without.Count, without.Select(r => r.Name)))
            { Items = [.. without.Select(r => new CountedItem(r.Item, null))] };

        decimal Shown(Length length) => inches ? length.Feet : length.Metres;
    }

    private static List<string> HeldBy(CableCuts cuts, HeldBack why) => [.. cuts.Held.Where(r => HouseCuts.WhyHeld(r) == why).Select(r => r.Name)];

    /// <summary>Which figures in a length are those that the program began with, as the pull sheet says it; null where there are none.</summary>
    private static Sentence? TypedByNobody(House house, List<HomeRun> runs)
    {
        var begun = new List<Arg>();
        if (BegunWith.Is(house.Job, HouseFacts.CableAllowance))
            begun.Add(Allowance.With(Arg.Number(house.Job.Get(HouseFacts.CableAllowance)!.Value, "%")));
        if (BegunWith.Is(house.Job, HouseFacts.PanelTail) && runs.Exists(r => r.TailAtPanel is null))
            begun.Add(PanelTail.With(house.Job.Get(HouseFacts.PanelTail)!.Value));
        return begun.Count == 0 ? null : BegunBy.With(Arg.All(begun));
    }

    private static PartLine Boxes(CableCuts cuts, Result<CutPlan>? planned, bool inches)
    {
        PartLine Line(decimal? count, Sentence from) =>
            new(PartGroup.Cable, ToBuy.With(PartWords.OfKit(cuts.Cable.Name)), count, "", from) { Name = cuts.Cable.Name };

        var waiting = cuts.WithoutLength.Select(r => r.Name).ToList();
        var (tooLong, notListed) = (HeldBy(cuts, HeldBack.TooLong), HeldBy(cuts, HeldBack.NotListed));
        var held = tooLong.Count + notListed.Count;
        if (planned is not { } plan)
        {
            return held > 0 ? Line(null, NoneMayBeCut.With().But(NoLength, waiting).But(TooLong, tooLong).But(NotListed, notListed))
                : waiting.Count == 0 ? Line(0, NothingWaits) : Line(null, NoneHasALength.With().But(NoLength, waiting));
        }
        if (!plan.Ok)
            return Line(null, PartWords.Typed(plan.Reason!));
        var toBuy = plan.Value.ToBuy;
        if (!cuts.UnknownBoxes.IsEmpty && toBuy.Found > 0)
        {
            return Line(null,
                NotMeasured.With(toBuy.Found).But(NotKnownHowMuch, cuts.UnknownBoxes.Select(b => b.Name)).But(NoLength, waiting)
                    .But(TooLong, tooLong).But(NotListed, notListed));
        }
        // With the runs that have no length yet, or may not be cut yet, it may take more, and never fewer than is proven for those that have one.
        if (waiting.Count + held > 0)
        {
            var known = Line(toBuy.Limit > 0 ? toBuy.Limit : null,
                (held > 0 ? ForThoseThatMayBeCut : ForThoseKnown).With(PartWords.ManyRuns(cuts.Order.Pieces.Length)).But(NoLength, waiting)
                    .But(TooLong, tooLong).But(NotListed, notListed));
            return known with { AtLeast = true };
        }
        var from = Planned.With(PartWords.ManyRuns(cuts.Order.Pieces.Length), PartWords.ManyBoxes(cuts.Order.Boxes.Length));
        if (cuts.Order.NewBox is { } box)
            from = from.And(InANewOne.With(inches ? Arg.Number(Math.Round(box.Feet, 1), "ft") : Arg.Number(Math.Round(box.Metres, 1), "m")));
        return Line(toBuy.Found, from.And(toBuy.Proven ? NoPlanNeedsFewer : MayBePossible.With(toBuy.Limit)));
    }
}

using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;

namespace TrimOut.Core.Plans.Parts;

/// <summary>Cable by type, and the boxes that the cut plan asks for.</summary>
internal static class CableParts
{
    public static IEnumerable<PartLine> Of(House house, IEnumerable<PlannedCable> plans)
    {
        var (unit, inches) = house.DisplayUnits == DisplayUnits.Inches ? ("ft", true) : ("m", false);
        foreach (var (cuts, plan) in plans)
        {
            var runs = house.Runs.Where(r => r.Cable?.Id == cuts.Cable.Id).ToList();
            var known = runs.Where(r => r.Needed is not null).ToList();
            var length = known.Aggregate(Length.Zero, (sum, r) => sum + r.Needed!.Value);
            var open = runs.Except(known).ToList();
            if (runs.Count > 0)
            {
                yield return new PartLine(PartGroup.Cable, cuts.Cable.Name, known.Count == 0 ? null : Math.Ceiling(inches ? length.Feet : length.Metres), unit,
                    $"legs, allowance and both tails of " +
                        $"{HouseParts.Many(known.Count, "run")}{(open.Count > 0 ? $"; no length yet: {HouseParts.Names(open.Select(r => r.Name))}" : "")}");
            }
            yield return Boxes(cuts, plan, house);
        }
        var without = house.Runs.Where(r => r.Cable is null).ToList();
        if (without.Count > 0)
            yield return new PartLine(PartGroup.Cable, "Runs without a cable", null, "", $"{without.Count}: {HouseParts.Names(without.Select(r => r.Name))}");
    }

    private static PartLine Boxes(CableCuts cuts, Result<CutPlan>? planned, House house)
    {
        PartLine Line(decimal? count, string from) => new(PartGroup.Cable, $"{cuts.Cable.Name}: boxes to buy", count, "", from);

        if (planned is not { } plan)
            return Line(0, "no run of it waits to be cut");
        return plan.Ok
            ? Line(plan.Value.ToBuy.Found,
                $"cut plan for {HouseParts.Many(cuts.Order.Pieces.Length, "run")} not pulled yet, " +
                $"{HouseParts.Many(cuts.Order.Boxes.Length, "box", "boxes")} on " +
                $"hand{(cuts.Order.NewBox is { } box ? $", {box.ShowRounded(house.DisplayUnits, LengthScale.Run)} in a new one" : "")}; " +
                        $"{(plan.Value.ToBuy.Proven ? "no plan needs fewer" : $"it may be possible with {plan.Value.ToBuy.Limit}")}")
            : Line(null, plan.Reason!);
    }
}

using TrimOut.Core.Facts;
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
                var line = new PartLine(PartGroup.Cable, cuts.Cable.Name, known.Count == 0 ? null : Math.Ceiling(inches ? length.Feet : length.Metres), unit,
                    $"legs, allowance and both tails of " +
                        $"{HouseParts.Many(known.Count, "run")}{(open.Count > 0 ? $"; no length yet: {HouseParts.Names(open.Select(r => r.Name))}" : "")}"
                        + $"{(known.Count > 0 ? TypedByNobody(house, known) : "")}");
                yield return line with { AtLeast = open.Count > 0 };
            }
            yield return Boxes(cuts, plan, house);
        }
        var without = house.Runs.Where(r => r.Cable is null).ToList();
        if (without.Count > 0)
            yield return new PartLine(PartGroup.Cable, "Runs without a cable", null, "", $"{without.Count}: {HouseParts.Names(without.Select(r => r.Name))}");
    }

    /// <summary>Which figures in a length are those that the program began with, as the pull sheet says it.</summary>
    private static string TypedByNobody(House house, List<HomeRun> runs)
    {
        var facts = new Fact[] { HouseFacts.CableAllowance, HouseFacts.PanelTail }.Where(f => BegunWith.Is(house.Job, f)
            && (f != HouseFacts.PanelTail || runs.Exists(r => r.TailAtPanel is null)));
        var begun = facts.Select(f => f == HouseFacts.CableAllowance
            ? $"allowance {f.ShowOf(house.Job, house)} %" : $"tail at the panel {f.ShowOf(house.Job, house)}").ToList();
        return begun.Count == 0 ? "" : $"; {string.Join(", ", begun)} (what the program began with, typed by nobody)";
    }

    private static PartLine Boxes(CableCuts cuts, Result<CutPlan>? planned, House house)
    {
        PartLine Line(decimal? count, string from) => new(PartGroup.Cable, $"{cuts.Cable.Name}: boxes to buy", count, "", from);

        var open = Open("no length yet", cuts.WithoutLength.Select(r => r.Name));
        if (planned is not { } plan)
            return cuts.WithoutLength.IsEmpty ? Line(0, "no run of it waits to be cut")
                : Line(null, $"no run that waits to be cut has a length{open}");
        if (!plan.Ok)
            return Line(null, plan.Reason!);
        var unread = Open("it is not known how much is left in", cuts.UnknownBoxes.Select(b => b.Name));
        if (unread.Length > 0 && plan.Value.ToBuy.Found > 0)
            return Line(null, $"{NumberText.Plain(plan.Value.ToBuy.Found)} without what is in boxes on hand that nobody measured{unread}{open}");
        // With the runs that have no length yet it may take more, and never fewer than is proven for those that have one.
        if (open.Length > 0)
        {
            var least = plan.Value.ToBuy.Limit;
            var known = Line(least > 0 ? least : null, $"cut plan for the {HouseParts.Many(cuts.Order.Pieces.Length, "run")} whose length is known{open}");
            return known with { AtLeast = true };
        }
        return Line(plan.Value.ToBuy.Found,
            $"cut plan for {HouseParts.Many(cuts.Order.Pieces.Length, "run")} not pulled yet, " +
            $"{HouseParts.Many(cuts.Order.Boxes.Length, "box", "boxes")} on " +
            $"hand{(cuts.Order.NewBox is { } box ? $", {box.ShowAtMost(house.DisplayUnits, LengthScale.Run)} in a new one" : "")}; " +
            $"{(plan.Value.ToBuy.Proven ? "no plan needs fewer" : $"it may be possible with {plan.Value.ToBuy.Limit}")}");
    }

    private static string Open(string why, IEnumerable<string> names) => HouseParts.Names(names) is { Length: > 0 } some ? $"; {why}: {some}" : "";
}

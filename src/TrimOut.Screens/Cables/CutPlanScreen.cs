using TrimOut.Core;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Cables;

/// <summary>Which run comes out of which box, as a picture of each box, with the marks to cut at.</summary>
internal sealed record CutPlanScreen(IReadOnlyList<CablePlan> Plans, int Selected) : IScreen, IAsked
{
    /// <summary>Few enough steps that keys are not held up on a laptop; what is not proven by then is said.</summary>
    private const long Steps = 200_000;

    public string Title => "Cut plan";

    public Unit? UnitAt(Sight sight) => null;

    public AskedFigures? FiguresAt(Sight sight) =>
        Selected < Plans.Count && Plans[Selected] is { Plan: { Ok: true } plan, Cuts: var cuts } ? new AskedFigures(cuts.Cable.Name, CutFigures.Of(cuts, plan.Value), null) : null;

    public IReadOnlyList<IKeyAction> Keys => CutPlanKeys.All;

    public static CutPlanScreen At(Sight sight) => new([.. HouseCuts.Orders(sight.House).Select(c => new CablePlan(c,
        c.Order.Pieces.IsEmpty ? new Refusal("No run of this cable waits to be cut.") : CutPlanner.Solve(c.Order, steps: Steps)))], 0);

    public IScreen Fit(Sight sight) => At(sight) is var fresh ? fresh with { Selected = Paging.Move(Selected, 0, Math.Max(1, fresh.Plans.Count)) } : this;

    public void Draw(Area area, Sight sight, Typing? typing)
    {
        if (Plans.Count == 0)
        {
            area.PutWrapped(2, 1, 3, "There is nothing to cut yet: choose cables for the runs first, then come back.", Tone.Strong);
            return;
        }
        var plan = Plans[Math.Min(Selected, Plans.Count - 1)];
        var units = sight.House.DisplayUnits;
        area.PutFit(1, 0, area.Width - 1, $"{plan.Cuts.Cable.Name} ({Selected + 1} of {Plans.Count} cables; left and right change)", Tone.Heading);
        var y = 1;
        if (!plan.Plan.Ok)
        {
            y = area.PutWrapped(1, y, 4, plan.Plan.Reason!, Tone.Caution);
        }
        else
        {
            y = area.PutWrapped(1, y, 3, plan.Plan.Value.Says(units), Tone.Text) + 1;
            foreach (var box in plan.Plan.Value.Boxes)
            {
                if (y + 2 >= area.Height)
                    break;
                BoxDrawing.Draw(area.Part(1, y++, area.Width - 2, 1), box, units, sight.Glyphs);
                y = area.PutWrapped(4, y, 3, "cut at " + string.Join(", ", box.Cuts.Select(c => $"{c.Piece.Id} {c.To.ShowRounded(units, LengthScale.Run)}")) + $"; left {box.LeftOver.ShowRounded(units, LengthScale.Run)}", Tone.Dim);
            }
        }
        foreach (var (subject, why) in plan.Cuts.LeftOut.TakeWhile(_ => y < area.Height))
            area.PutFit(1, y++, area.Width - 2, $"Not in it: {subject.Name}, {why}.", Tone.Dim);
    }
}

/// <summary>The plan for one cable, or why there is none.</summary>
internal sealed record CablePlan(CableCuts Cuts, Result<CutPlan> Plan);

/// <summary>Keys of the cut plan.</summary>
internal static class CutPlanKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<CutPlanScreen>("right", "Next cable", "The plan for the next cable.", (s, _) => new Turn(s with { Selected = Paging.Move(s.Selected, 1, s.Plans.Count) })),
        new KeyAction<CutPlanScreen>("left", "Cable before", "The plan for the cable before.", (s, _) => new Turn(s with { Selected = Paging.Move(s.Selected, -1, s.Plans.Count) })),
    ];
}

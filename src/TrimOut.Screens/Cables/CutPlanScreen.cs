using System.Collections.Immutable;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Screens.Drawings;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Cables;

/// <summary>Which run comes out of which box, as a picture of each box, with the marks to cut at.</summary>
/// <param name="House">The house that it was planned for.</param>
/// <param name="Plans">The plan of each cable, the same as on the papers.</param>
/// <param name="Selected">The cable that is shown.</param>
internal sealed record CutPlanScreen(House House, ImmutableArray<PlannedCable> Plans, int Selected) : IFiltered, IAsked
{
    public string Title => "Cut plan";

    public Unit? UnitAt(ScreenContext context) => null;

    public AskedFigures? FiguresAt(ScreenContext context) =>
        IsOf(context) && Selected < Plans.Length && Plans[Selected] is { Plan: { Ok: true } plan, Cuts: var cuts }
            ? new AskedFigures(cuts.Cable.Name, CutFigures.Of(cuts, plan.Value), null)
            : null;

    /// <summary>The box at the top.</summary>
    public int Top { get; init; }

    private ScrollEnd End { get; } = new();

    /// <summary>So many boxes further down or up, and no further than the last page.</summary>
    internal CutPlanScreen Scroll(int by) => this with { Top = Paging.Move(End.Move(Top, by), 0, Boxes) };

    public IReadOnlyList<IKeyAction> Keys => CutPlanKeys.All;

    public IReadOnlyList<Sign> Signs { get; } = [BoxDrawing.Cut, BoxDrawing.Left];

    /// <summary>Plans the cuts of a house beside the keys, then shows them.</summary>
    /// <param name="context">What is seen now.</param>
    /// <param name="inPlace">Whether they are shown in place of the screen that asks.</param>
    public static Ask.Beside Plan(ScreenContext context, bool inPlace = false) => new("Planning the cuts", (_, says, stop) =>
        new Ask.Open(new CutPlanScreen(context.House, CutPlans.Of(context.House, says, stop), 0), inPlace));

    public string Search { get; init; } = "";

    /// <summary>The boxes that are shown of the plan of a cable.</summary>
    private ImmutableArray<BoxCuts> BoxesOf(int cable, string search) => cable >= Plans.Length || Plans[cable].Plan is not { Ok: true } plan ? []
        : search.Length == 0 ? plan.Value.Boxes
        : [.. plan.Value.Boxes.Where(b => Filtering.Fits($"{BoxDrawing.Name(b)} {string.Join(' ', b.Cuts.Select(c => c.Piece.Id))}", search))];

    public (int Shown, int All) Count(ScreenContext context) => (Boxes, BoxesOf(Selected, "").Length);

    /// <summary>With only the boxes that a run comes out of; where that is none of this cable, the first cable that has one is shown.</summary>
    public IScreen Searching(string search, ScreenContext context)
    {
        var has = BoxesOf(Selected, search).Length > 0 ? Selected
            : Enumerable.Range(0, Plans.Length).FirstOrDefault(c => BoxesOf(c, search).Length > 0, Selected);
        return this with { Search = search, Selected = has, Top = 0 };
    }

    /// <summary>Boxes of the plan that are shown.</summary>
    public int Boxes => BoxesOf(Selected, Search).Length;

    private bool IsOf(ScreenContext context) => ReferenceEquals(context.House, House);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        if (!IsOf(context))
        {
            area.PutWrapped(2, 1, 3, "The house was changed since the cuts were planned. p plans them again.", Tone.Strong);
            return;
        }
        if (Plans.IsEmpty)
        {
            area.PutWrapped(2, 1, 3, "There is nothing to cut yet: choose cables for the runs first, then come back.", Tone.Strong);
            return;
        }
        var plan = Plans[Math.Min(Selected, Plans.Length - 1)];
        var units = context.House.DisplayUnits;
        var boxes = BoxesOf(Selected, Search);
        if (boxes.Any(b => b.Cuts.Length > 0))
        {
            (area, var card) = Wide.Split(area, context.Glyphs);
            if (card is { } beside)
                CutCard.Draw(beside, boxes, units, Top < boxes.Length ? boxes[Top] : null);
        }
        area.PutFit(1, 0, area.Width - 1, $"{plan.Cuts.Cable.Name} ({Selected + 1} of {Plans.Length} cables; left and right change)", Tone.Heading);
        var y = 1;
        if (plan.Plan is not { } planned)
        {
            y = area.PutWrapped(1, y, 3,
                plan.Cuts.WithoutLength.Length > 0
                ? "Nothing can be planned of this cable yet: the runs that wait to be cut have no length, and what is missing is said below."
                : !plan.Cuts.Held.IsEmpty ? "Nothing may be cut of this cable yet, and why is said below."
                : plan.Cuts.LeftOut.Any(l => l.Subject is HomeRun)
                ? "Nothing is left to cut of this cable: no run of it waits to be cut, and why is said below."
                : "No run is to be cut of this cable.", Tone.Strong);
            y = area.PutWrapped(1, y, 3,
                "While runs wait to be pulled, each box stands here as a picture, with the run that each cut is for and the mark to cut at.", Tone.Dim) + 1;
        }
        else if (!planned.Ok)
        {
            y = area.PutWrapped(1, y, 4, planned.Reason!, Tone.Caution);
        }
        else
        {
            y = area.PutWrapped(1, y, 3,
                (plan.Cuts.WithoutLength.IsEmpty ? "" : "For the runs whose length is known: ") + planned.Value.Says(units), Tone.Text) + 1;
            y = DrawBoxes(area, y, boxes, units, context.Glyphs);
        }
        foreach (var why in plan.Cuts.LeftOut.GroupBy(l => l.Why))
        {
            if (y < area.Height)
                y = area.PutWrapped(1, y, area.Height - y, $"Not in it, {why.Key}: {string.Join(", ", why.Select(l => l.Subject.Name))}.", Tone.Dim);
        }
    }

    /// <summary>The boxes from the one that was scrolled to, each whole, and how many lie beyond the edge.</summary>
    private int DrawBoxes(Area area, int y, ImmutableArray<BoxCuts> boxes, DisplayUnits units, Glyphs glyphs)
    {
        string CutsOf(BoxCuts box) => "cut at " + string.Join(", ", box.Cuts.Select(c => $"{c.Piece.Id} {c.To.ShowRounded(units, LengthScale.Run)}")) +
            $"; left {box.LeftOver.ShowRounded(units, LengthScale.Run)}";
        var heights = boxes.Reverse().Select(b => 1 + TextWidth.Wrap(CutsOf(b), area.Width - 4).Count());
        var first = End.Shown(Top, heights, boxes.Length, area.Height - 1 - y);
        var names = BoxDrawing.NameCells(boxes, units, area.Width - 2);
        var shown = 0;
        foreach (var box in boxes.Skip(first))
        {
            var cuts = CutsOf(box);
            if (shown > 0 && y + 1 + TextWidth.Wrap(cuts, area.Width - 4).Count() > area.Height - 1)
                break;
            shown++;
            BoxDrawing.Draw(area.Part(1, y++, area.Width - 2, 1), box, units, glyphs, names);
            y = area.PutWrapped(4, y, Math.Max(0, area.Height - y), cuts, Tone.Dim);
        }
        if (Paging.Beyond(first, boxes.Length - first - shown, "boxes above", "boxes below") is not { Length: > 0 } beyond)
            return y;
        area.PutFit(1, Math.Min(y, area.Height - 1), area.Width - 1, beyond, Tone.Dim);
        return y + 1;
    }
}

/// <summary>Keys of the cut plan.</summary>
internal static class CutPlanKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<CutPlanScreen>("right", "Next cable", "The plan for the next cable.",
            (s, _) => new Transition(s with { Selected = Paging.Move(s.Selected, 1, s.Plans.Length), Top = 0 })),
        new KeyAction<CutPlanScreen>("left", "Cable before", "The plan for the cable before.",
            (s, _) => new Transition(s with { Selected = Paging.Move(s.Selected, -1, s.Plans.Length), Top = 0 })),
        new KeyAction<CutPlanScreen>("p", "Plan again", "Plans the cuts of the house as it is now.",
            (s, context) => new Transition(s, CutPlanScreen.Plan(context, inPlace: true))) { OnBar = false },
        Filtering.Key<CutPlanScreen>("boxes", "tag of a run, or label of a box"),
        .. Moves.Through<CutPlanScreen>("box", (s, _, by) => s.Scroll(by)),
    ];
}

using System.Globalization;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Cables;

/// <summary>A column of the cables: its heading with what it means, where it stands, and what it shows of a run.</summary>
internal sealed record CableColumn(Sign Sign, int At, int Cells, Func<HomeRun, string> Show, bool IsFigure = false)
{
    /// <summary>
    /// The unchecked values of sheets that what it shows rests on, where sheets decide it: then it has a ? behind it, in a cell of its own.
    /// </summary>
    private Func<HomeRun, IReadOnlyList<Fact>> Unchecked { get; init; } = _ => [];

    /// <summary>What it shows of a run, with the mark.</summary>
    public string Shown(HomeRun run) => Show(run) is { Length: > 0 } shown && Unchecked(run).Count > 0 ? shown + Mark : Show(run);

    /// <summary>The mark where there are no cells to spare.</summary>
    private const string Mark = "?";

    public static readonly IReadOnlyList<CableColumn> All =
    [
        new(Heads("Unit", "the unit at the window end"), 4, 5, r => r.Unit.Tag),
        new(Heads("Cable", "the cable of the run"), 10, 7, r => r.Cable?.Name ?? ""),
        new(Heads("Legs", "all legs of the run together"), 18, 8, r => LegsWithoutLength(r) is [var first, ..] ? $"leg {first}: ?" : Run(r.LegsLength, r),
            IsFigure: true),
        new(Heads("With tails", "legs and both tails as measured: what current goes through, one way"), 27, 10, r => Run(r.OneWay, r), IsFigure: true),
        new(Heads("To cut", "what comes off the box, as in the cut plan: legs with the allowance, and tails as measured or planned; or that it is "
            + "pulled, or too long or unlisted and not to be cut"), 38,
            8, r => HouseCuts.IsPulled(r) ? "pulled" : Held(r) ?? r.ShownNeeded ?? "", IsFigure: true)
        {
            // That it may be cut so long is another figure, which stands beside it.
            Unchecked = r => HouseCuts.IsPulled(r) ? []
                : Held(r) is not null ? UncheckedValues.Read(r.Unit, u => Held(u.Run!)).Unchecked : r.UncheckedInNeeded,
        },
        new(Heads("Longest", "the longest run by the maker's table and by voltage drop, the tighter of them; with ~ the one of your own loop budget, where "
            + "neither is known; a ? behind a figure: it rests on a maker's sheet, and nobody checked it against that sheet yet"),
            47, 8, LongestOf, IsFigure: true) { Unchecked = r => UncheckedValues.Read(r.Unit, u => LongestOf(u.Run!)).Unchecked },
        new(Heads("1st test", "loop resistance, after the cable was pulled"), 56, 9, r => r.Show(RunFacts.FirstLoop), IsFigure: true),
        new(Heads("2nd test", "loop resistance, after drywall"), 66, 9, r => r.Show(RunFacts.SecondLoop), IsFigure: true),
        new(Heads("On", "panel and output that it lands on"), 76, 12,
            r => r is { Panel: { } panel, Output: { } output } ? string.Create(CultureInfo.InvariantCulture, $"{panel.Name}-{output}") : ""),
    ];

    private static string? Held(HomeRun run) => HouseCuts.WhyHeld(run) switch
    {
        HeldBack.TooLong => "too long",
        HeldBack.NotListed => "unlisted",
        _ => null,
    };

    /// <summary>The columns that all of it takes.</summary>
    public static readonly int Width = All.Max(c => c.At + c.Cells) + 1;

    /// <summary>The legs of a run that have no length yet, from 1 on: while there is one, nothing is known of the length of the run.</summary>
    public static IReadOnlyList<int> LegsWithoutLength(HomeRun run) =>
        [.. run.Legs.Select((leg, at) => (leg, Number: at + 1)).Where(l => l.leg.Length is null).Select(l => l.Number)];

    /// <summary>Which values of which sheets would say how long a run may be; empty where that is known, or where no cable is chosen yet.</summary>
    public static string SheetsToAsk(HomeRun run)
    {
        if (run is not { Cable: { } cable, BranchesOff: null } || run.Longest is not null)
            return "";
        var of = new (KitSheet? Part, Fact[] Facts)[]
        {
            (cable, [CableTypeFacts.LongestRun]), (run.Panel?.Type, [PanelTypeFacts.Supply]),
            (run.Unit.Kind, [CoveringKindFacts.LeastVolts, CoveringKindFacts.RunningCurrent, CoveringKindFacts.StartingCurrent]),
        };
        return string.Join("; ", of.Select(p => (p.Part, Blank: p.Facts.Where(f => p.Part is not null && p.Part.Item.Latest(f)?.Stored is null).ToList()))
            .Where(p => p.Blank.Count > 0).Select(p => $"{p.Part!.Name}: {string.Join(", ", p.Blank.Select(f => f.Label))}"));
    }

    private static Sign Heads(string heading, string means) => Sign.Words(heading, $"heads a column: {means}");

    private static string LongestOf(HomeRun run) => run.Longest is { } most ? AtMost(most, run)
        : run.Cable is { } cable && LoopBudget.LongestOf(cable) is { } budget ? "~" + AtMost(budget, run) : "";

    private static string AtMost(Length length, HomeRun run) => length.ShowAtMost(run.House.DisplayUnits, LengthScale.Run);

    private static string Run(Length? length, HomeRun run) => length?.ShowRounded(run.House.DisplayUnits, LengthScale.Run) ?? "";
}

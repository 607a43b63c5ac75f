using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Hours;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Hours;

/// <summary>What each phase of the house took, and what it is likely to take by the houses before it.</summary>
/// <param name="Selected">The phase under the cursor, from 0 on.</param>
/// <param name="Phases">The hours of the house.</param>
/// <param name="Elsewhere">What a unit took in other houses.</param>
internal sealed record HoursScreen(int Selected, ImmutableArray<PhaseHours> Phases, ImmutableArray<HourRate> Elsewhere) : IScreen, ITable
{
    private const string Unknown = "-";
    private const int First = 4;

    /// <summary>The columns: their heads, where they begin, and for figures, which end below each other, how wide they are.</summary>
    private static readonly (string Head, int At, int? Cells)[] Columns =
        [("Phase", 1, null), ("Typed", 15, 7), ("Visits", 23, 7), ("By marks", 31, 8), ("Units", 40, 7), ("A unit", 48, 7), ("Likely", 58, null)];

    public string Title => "Hours";

    public IReadOnlyList<IKeyAction> Keys => HoursKeys.All;

    /// <summary>Reads other houses beside the keys, then shows the hours of this one.</summary>
    public static Ask.Beside Read(ScreenContext context) => new("Reading the hours of other houses", (desk, _, stop) =>
        new Ask.Open(new HoursScreen(0, PhaseHours.Of(context.Log, context.Steps), HourRate.Of(desk.OtherHours(context.Where, stop)))));

    public Phase Current => Phases[Selected].Phase;

    public IScreen Fit(ScreenContext context) => this with { Phases = PhaseHours.Of(context.Log, context.Steps) };

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Phases.Select(Cells).Prepend([.. Columns.Select(c => c.Head)]);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        area.PutFit(1, 0, area.Width - 1, "Hours of all people. Typed ones count first, then visits, then marks.", Tone.Dim);
        area.PutFit(1, 1, area.Width - 1, "Marks say the least it was: a gap of 30 minutes or more is no work.", Tone.Dim);
        PutRow(area, First - 1, [.. Columns.Select(c => c.Head)], Tone.Heading);
        foreach (var (y, at) in Paging.Rows(area.Rows(First, area.Height - First - 2), Phases.Length, Selected, at => this with { Selected = at }))
        {
            var tone = at == Selected ? Tone.Selected : Phases[at].Counted is null ? Tone.Dim : Tone.Text;
            area.PutFit(0, First + y, area.Width, "", tone);
            PutRow(area, First + y, Cells(Phases[at]), tone);
        }
        area.PutWrapped(1, First + Phases.Length + 1, 3, SomeVisits() + Below(), Tone.Dim);
    }

    private static void PutRow(Area area, int y, IReadOnlyList<string> cells, Tone tone)
    {
        foreach (var ((_, x, wide), cell) in Columns.Zip(cells))
        {
            if (wide is { } most)
                area.PutFigure(x, y, most, cell, tone);
            else
                area.Put(x, y, cell, tone);
        }
    }

    private IReadOnlyList<string> Cells(PhaseHours phase) =>
    [
        phase.Phase.Full(), Figure(phase.Typed),
        $"{Figure(phase.OfVisits)}{(phase is { OfVisits: not null, VisitsWithout: > 0 } ? "+" : "")}", Figure(phase.Marked > 0 ? phase.Marked : null),
        string.Create(CultureInfo.InvariantCulture, $"{phase.Through}/{phase.Units}"), Figure(phase.PerUnit), Likely(phase),
    ];

    private static string Figure(decimal? hours) => hours?.ToString("0.00", CultureInfo.InvariantCulture) ?? Unknown;

    private string Likely(PhaseHours phase) => HourEstimate.Of([phase], Elsewhere) is [var likely]
        ? likely.Rate.IsAtLeast ? $"{Shown(likely.Hours)} or more"
        : $"{Shown(likely.Hours)}{(likely.Rate.Houses > 1 ? $" ({Shown(likely.Least)} to {Shown(likely.Most)})" : "")}" : Unknown;

    private string SomeVisits() => Phases[Selected] is not { OfVisits: not null, VisitsWithout: > 0 and var without } ? ""
        : $"{NumberText.Counted(without, "visit")} of this phase {(without == 1 ? "has" : "have")} no hours: it took at least so many. ";

    private string Below() => Elsewhere.IsEmpty
        ? "No other house that you opened has hours for a phase that it is through: what is likely can't be said."
        : Elsewhere.FirstOrDefault(r => r.Phase == Current) is not { } rate ? "No other house that you opened is through this phase and has hours for it."
        : $"By {NumberText.Counted(rate.Houses, "other house")}{(rate.Houses == 1 ? " alone" : "")}: {Shown(rate.Median)} h a unit"
            + $"{(rate.Houses > 1 ? $", {Shown(rate.Least)} to {Shown(rate.Most)}" : "")}{ByMarks(rate)}.";

    private static string ByMarks(HourRate rate) => rate.ByMarks == 0 ? "" : rate.IsAtLeast ? ", all by marks: it is at least so many"
        : $"; {NumberText.Counted(rate.ByMarks, "house")} by marks alone left out";

    private static string Shown(decimal? hours) => hours is { } known ? NumberText.Plain(Math.Round(known, known < 10 ? 2 : 1)) : Unknown;
}

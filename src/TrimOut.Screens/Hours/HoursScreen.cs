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
    private static readonly int[] Columns = [1, 15, 23, 31, 42, 50, 59];
    private static readonly string[] Heads = ["Phase", "Typed", "Visits", "By marks", "Units", "A unit", "Likely"];

    public string Title => "Hours";

    public IReadOnlyList<IKeyAction> Keys => HoursKeys.All;

    /// <summary>Reads other houses beside the keys, then shows the hours of this one.</summary>
    public static Ask.Beside Read(ScreenContext context) => new("Reading the hours of other houses", (desk, _, stop) =>
        new Ask.Open(new HoursScreen(0, PhaseHours.Of(context.Log, context.Steps), HourRate.Of(desk.OtherHours(context.Where, stop)))));

    public Phase Current => Phases[Selected].Phase;

    public IScreen Fit(ScreenContext context) => this with { Phases = PhaseHours.Of(context.Log, context.Steps) };

    public IEnumerable<IReadOnlyList<string>> Table(ScreenContext context) => Phases.Select(Cells).Prepend(Heads);

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        area.PutFit(1, 0, area.Width - 1, "Hours of all people. Typed ones count first, then visits, then marks.", Tone.Dim);
        area.PutFit(1, 1, area.Width - 1, "Marks say the least it was: a gap of 30 minutes or more is no work.", Tone.Dim);
        foreach (var (x, head) in Columns.Zip(Heads))
            area.Put(x, First - 1, head, Tone.Heading);
        foreach (var (y, at) in Paging.Rows(area.Rows(First, area.Height - First - 2), Phases.Length, Selected, at => this with { Selected = at }))
        {
            var tone = at == Selected ? Tone.Selected : Phases[at].Counted is null ? Tone.Dim : Tone.Text;
            area.PutFit(0, First + y, area.Width, "", tone);
            foreach (var (x, cell) in Columns.Zip(Cells(Phases[at])))
                area.Put(x, First + y, cell, tone);
        }
        area.PutWrapped(1, First + Phases.Length + 1, 3, Below(), Tone.Dim);
    }

    private IReadOnlyList<string> Cells(PhaseHours phase) =>
    [
        phase.Phase.Full(), Shown(phase.Typed), Shown(phase.OfVisits), phase.Marked > 0 ? Shown(phase.Marked) : Unknown,
        string.Create(CultureInfo.InvariantCulture, $"{phase.Through}/{phase.Units}"), Shown(phase.PerUnit), Likely(phase),
    ];

    private string Likely(PhaseHours phase) => HourEstimate.Of([phase], Elsewhere) is [var likely]
        ? $"{Shown(likely.Hours)}{(likely.Rate.Houses > 1 ? $" ({Shown(likely.Least)} to {Shown(likely.Most)})" : "")}" : Unknown;

    private string Below() => Elsewhere.IsEmpty
        ? "No other house that you opened has hours for a phase that it is through: what is likely can't be said."
        : Elsewhere.FirstOrDefault(r => r.Phase == Current) is not { } rate ? "No other house that you opened is through this phase and has hours for it."
        : $"By {NumberText.Counted(rate.Houses, "other house")}{(rate.Houses == 1 ? " alone" : "")}: {Shown(rate.Median)} h a unit"
            + $"{(rate.Houses > 1 ? $", {Shown(rate.Least)} to {Shown(rate.Most)}" : "")}{ByMarks(rate)}.";

    private static string ByMarks(HourRate rate) => rate.ByMarks == 0 ? ""
        : string.Create(CultureInfo.InvariantCulture, $"; {rate.ByMarks} of them by marks, at least");

    private static string Shown(decimal? hours) => hours is { } known ? NumberText.Plain(Math.Round(known, known < 10 ? 2 : 1)) : Unknown;
}

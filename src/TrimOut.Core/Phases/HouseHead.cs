using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Whom the next step of a unit or a panel waits for.</summary>
public enum WaitsFor
{
    /// <summary>Nobody else: the crew does it.</summary>
    Crew,

    /// <summary>Drywall and paint.</summary>
    Paint,

    /// <summary>The maker: what was ordered is to be acknowledged, or to come; what failed is to be replaced.</summary>
    Maker,

    /// <summary>A licensed electrician.</summary>
    Electrician,

    /// <summary>The owner.</summary>
    Owner,
}

/// <summary>Where a house stands: how many units are finished, what is next, and who waits for whom.</summary>
/// <param name="Finished">Units with nothing left to do.</param>
/// <param name="Units">All units.</param>
/// <param name="Next">The earliest thing that the crew can do now, with where; null where there is none.</param>
/// <param name="Waiting">How many units wait for somebody else; who nobody waits for is not there.</param>
public sealed record HouseHead(int Finished, int Units, (Subject Subject, Step Step)? Next, ImmutableArray<(WaitsFor For, int Units)> Waiting)
{
    /// <summary>Where a house stands on a day.</summary>
    public static HouseHead Of(House house, StepList steps, DateOnly today)
    {
        var next = Progress.Walkers(house).Select(s => (Subject: s, Step: Progress.Next(s, steps)))
            .Where(n => n.Step is not null).Select(n => (n.Subject, Step: n.Step!, For: Of(n.Subject, n.Step!, today))).ToList();
        var ours = next.Where(n => n.For == WaitsFor.Crew).OrderBy(n => n.Step.Phase).ToList();
        // What failed in service waits for the maker, whatever else is to be done of it.
        var failed = house.Services.Where(s => s.WaitsForMaker).Select(s => house.FindUnit(s.About!.Id)).OfType<Unit>().Select(u => u.Id).ToHashSet();
        var waiting = next.Where(n => n.Subject is Unit && !failed.Contains(n.Subject.Id)).Select(n => n.For).Concat(failed.Select(_ => WaitsFor.Maker));
        return new(
            house.Units.Length - next.Count(n => n.Subject is Unit),
            house.Units.Length,
            ours.Count == 0 ? null : (ours[0].Subject, ours[0].Step),
            [.. waiting.Where(w => w != WaitsFor.Crew).GroupBy(w => w).OrderBy(g => g.Key).Select(g => (g.Key, g.Count()))]);
    }

    /// <summary>Whom a step waits for. Before the day of the paint a unit waits for it, unless work on the finished opening was marked already.</summary>
    public static WaitsFor Of(Subject subject, Step step, DateOnly today) => (subject, step) switch
    {
        (Unit unit, { Phase: Phase.CloseIn or Phase.Measure }) when !IsPainted(unit.House, today) && !WorkedOnFinished(unit) => WaitsFor.Paint,
        (Unit, { Id: "acknowledged" }) => WaitsFor.Maker,
        (Unit unit, { Id: "box-matched" }) when IsMarked(unit, "sheet-frozen") && AskedAgain.Since(unit, step) is null => WaitsFor.Maker,
        (Unit { Run.Panel: var panel }, { Id: "volts-read" }) when panel is null || !IsMarked(panel, "mains-connected") => WaitsFor.Electrician,
        (Panel, { Id: "mains-connected" }) => WaitsFor.Electrician,
        (Unit, { Phase: Phase.Handover }) => WaitsFor.Owner,
        _ => WaitsFor.Crew,
    };

    private static bool IsPainted(House house, DateOnly today) => house.Job.Get(HouseFacts.PaintedOn) is { } on && on <= today;

    private static bool WorkedOnFinished(Unit unit) =>
        StepList.All.Any(s => s is { Subject: ItemKind.Unit, Phase: Phase.CloseIn or Phase.Measure } && unit.MarkOf(s) is not null);

    private static bool IsMarked(Subject subject, string step) => StepList.Find(step) is { } of && subject.MarkOf(of) is not null;
}

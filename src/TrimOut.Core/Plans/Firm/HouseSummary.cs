using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Deliveries;
using TrimOut.Core.Plans.InService;
using TrimOut.Core.Plans.Parts;
using TrimOut.Core.Plans.Visits;

namespace TrimOut.Core.Plans.Firm;

/// <summary>What is shown of a house among many, without the house: nothing in it was worked out for one day, so that it does not age by itself.</summary>
/// <param name="Name">The house's name.</param>
/// <param name="Begun">The name of the change that began it, the same in all its copies; empty for a house without one.</param>
/// <param name="Changes">How many changes it has: of two copies the one with more is further.</param>
/// <param name="Phases">How far each phase is, in the order of the phases.</param>
/// <param name="Finished">Units with nothing left to do.</param>
/// <param name="Units">All units.</param>
/// <param name="PaintedOn">The day on which the paint is done; null while it is not known.</param>
/// <param name="BeforePaint">What is next and who waits for whom before that day.</param>
/// <param name="Painted">The same from that day on.</param>
/// <param name="Visits">Visits that are planned, the next first; those without a day last.</param>
/// <param name="Days">Days by which something is to be done, or on which something ends; the next first.</param>
/// <param name="Boxes">Boxes that are not here, or are to be ordered again.</param>
public sealed record HouseSummary(
    string Name, string Begun, int Changes, ImmutableArray<SummedPhase> Phases, int Finished, int Units, DateOnly? PaintedOn,
    SummedHead BeforePaint, SummedHead Painted,
    ImmutableArray<SummedVisit> Visits, ImmutableArray<SummedDay> Days, ImmutableArray<SummedBox> Boxes)
{
    /// <summary>Where it stands; empty while nobody said.</summary>
    public string Address { get; init; } = "";

    /// <summary>Who is expected at its visits and has a number, each once.</summary>
    public ImmutableArray<SummedPerson> People { get; init; } = [];

    /// <summary>What two laptops disagree about until somebody chooses, each in a few words.</summary>
    public ImmutableArray<string> Conflicts { get; init; } = [];

    /// <summary>How many stops are open.</summary>
    public int Stops => Phases.Sum(p => p.Stops);

    /// <summary>The summary of a house.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="report">What the checks say of it.</param>
    /// <param name="steps">The list of steps that the work is done by; this program's where none is given.</param>
    public static HouseSummary Of(HouseLog log, CheckReport report, StepList? steps = null)
    {
        var house = log.House;
        steps ??= StepList.Shipped;
        var open = VisitPlan.Open(house, steps);
        var head = HouseHead.Of(house, steps, DateOnly.MinValue);
        return new HouseSummary(
            house.Name, log.Changes.IsEmpty ? "" : log.Changes[0].Id.ToString(), log.Changes.Count,
            [.. PhaseNames.All.Select(p => SummedPhase.Of(Progress.Of(house, p, steps), report.StopsIn(p)))],
            head.Finished, head.Units, house.Job.Get(HouseFacts.PaintedOn),
            SummedHead.Of(head), SummedHead.Of(HouseHead.Of(house, steps, DateOnly.MaxValue)),
            VisitsOf(house, open), [.. DaysOf(log, steps, open).OrderBy(d => d.On).ThenBy(d => d.Kind)], [.. BoxesOf(house, report)])
        {
            Address = house.Job.Get(HouseFacts.Address) ?? "",
            Conflicts = [.. Conflict.All(house).Select(c => c.About.TrimEnd(':'))],
            People = [.. house.Visits.Where(v => v.State == VisitState.Planned).SelectMany(v => v.Expected).DistinctBy(c => c.Id)
                .Where(c => c.Telephone is { Length: > 0 }).Select(c => new SummedPerson(c.Name, c.Telephone!))],
        };
    }

    /// <summary>What is next and who waits for whom on a day.</summary>
    public SummedHead HeadOn(DateOnly today) => PaintedOn is { } on && on <= today ? Painted : BeforePaint;

    /// <summary>
    /// What is late or due within some days, the most pressing first: what is to be ordered again, the start of drywall, the handover, visits,
    /// orders, call-offs, boxes, the yearly visit, ends of warranties.
    /// </summary>
    /// <param name="today">The day on which it is looked at.</param>
    /// <param name="days">The days that are looked ahead, the first one today.</param>
    /// <remarks>
    /// The end of a warranty that is past is no longer due, nor is the start of drywall where all before it is ready; all else that is past is late. A box that
    /// comes after the day on which it must be here is due whenever that is. Units that are not ordered and whose order takes nobody knows how
    /// long are due whenever they are to be here: today may be the last day.
    /// </remarks>
    public IEnumerable<SummedDay> Due(DateOnly today, int days)
    {
        var until = today.AddDays(days - 1);
        return Visits.Where(v => v.On is not null).Select(v => new SummedDay(DueKind.Visit, v.On!.Value, v.What) { Visit = v })
            .Concat(Days.Where(d => d.Kind != DueKind.YearlyVisit))
            .Concat(Days.Where(d => d.Kind == DueKind.YearlyVisit && (d.From is null || d.From <= today)).OrderBy(d => d.On).TakeLast(1))
            .Concat(Boxes.Where(b => b is { Here: false, Reorder: false, Expected: not null }).GroupBy(b => b.Expected!.Value)
                .Select(b => new SummedDay(DueKind.Box, b.Key, string.Join(", ", b.Select(x => x.Tag)))))
            .Concat(Boxes.Any(b => b.Reorder) ? [new SummedDay(DueKind.Reorder, null, string.Join(", ", Boxes.Where(b => b.Reorder).Select(b => b.Tag)))] : [])
            .Concat(Boxes.Where(b => b.TooLate is not null).GroupBy(b => b.TooLate!.Value)
                .Select(b => new SummedDay(DueKind.BoxTooLate, b.Key.Needed, string.Join(", ", b.Select(x => x.Tag))) { TooLate = b.Key }))
            .Where(d => d.On is not { } on || ((on <= until || d.Kind is DueKind.OrderHere or DueKind.BoxTooLate)
                && (on >= today || !(d.IsEnd || d is { Kind: DueKind.Drywall, What.Length: 0 }))))
            .OrderBy(d => d.On).ThenBy(d => d.Kind);
    }

    /// <summary>Warranties that end within some days, the next first.</summary>
    /// <param name="today">The day on which it is looked at.</param>
    /// <param name="days">The days that are looked ahead.</param>
    public IEnumerable<SummedDay> WarrantiesEnding(DateOnly today, int days = DueInService.WarrantyDays) =>
        Days.Where(d => d.IsEnd && d.On is { } on && on >= today && on.DayNumber - today.DayNumber <= days);

    /// <summary>
    /// Boxes that did not come: those that were expected before a day, and those that somebody said did not arrive or came wrong, also those of another unit.
    /// </summary>
    /// <param name="today">The day on which it is looked at.</param>
    public IEnumerable<SummedBox> NotArrived(DateOnly today) => Boxes.Where(b => b.Reorder || b.Here || b.Expected < today);

    private static IEnumerable<SummedBox> BoxesOf(House house, CheckReport report)
    {
        var late = VisitPlan.BoxesTooLate(house).ToDictionary(b => b.Unit.Id);
        var visit = VisitPlan.FirstVisit(house, Phase.Hang)?.Name ?? "";
        return AwaitedBox.Of(house, report, DateOnly.MinValue).Select(b => new SummedBox(
            b.Unit.Tag, b.Unit.BoxExpectedOn, b.Unit is { BoxIsHere: true, ComesAgain: false }, b.Reorder,
            b.Unit.Item.Get(UnitFacts.OrderedOn) is not null || b.Unit.Item.Get(UnitFacts.ReorderedOn) is not null,
            late.TryGetValue(b.Unit.Id, out var box) ? new SummedTooLate(box.Comes, box.Needed, visit) : null));
    }

    private static ImmutableArray<SummedVisit> VisitsOf(House house, ImmutableArray<OpenPhase> open)
    {
        return
        [
            .. house.Visits.Where(v => v.State == VisitState.Planned).OrderBy(v => v.On is null).ThenBy(v => v.On).ThenBy(v => v.Item.Get(VisitFacts.From))
                .Select(v => new SummedVisit(v.On, v.Item.Get(VisitFacts.From), v.Item.Get(VisitFacts.Lasts), v.Name, v.Phase,
                    [.. v.Expected.Select(c => c.Name)], [.. VisitPlan.Before(v, open)])),
        ];
    }

    private static IEnumerable<SummedDay> DaysOf(HouseLog log, StepList steps, ImmutableArray<OpenPhase> open)
    {
        var house = log.House;
        string NotThrough(Phase last) => string.Join(", ", open.TakeWhile(o => o.Phase <= last).SelectMany(o => o.Who).Distinct());
        if (house.Job.Get(HouseFacts.DrywallOn) is { } drywall)
            yield return new SummedDay(DueKind.Drywall, drywall, NotThrough(Phase.RoughIn));
        if (house.Job.Get(HouseFacts.HandoverOn) is { } handover && house.Job.Get(HouseFacts.AcceptedOn) is null)
            yield return new SummedDay(DueKind.Handover, handover, NotThrough(Phase.Handover - 1));
        if (VisitPlan.Order(house) is { } order)
            yield return new SummedDay(DueKind.Order, order.By, string.Join(", ", order.Units));
        else if (house.Units.Where(u => !VisitPlan.IsOrdered(u)).Select(u => u.Tag).ToList() is { Count: > 0 } waiting
            && VisitPlan.Needed(house, Phase.Hang) is { } hang)
            yield return new SummedDay(DueKind.OrderHere, hang, string.Join(", ", waiting));
        foreach (var call in CallOff.Of(house, log.Changes, HouseParts.Of(house), steps).Where(c => c.State == CallOffState.Open && c.Line.MadeFor.IsEmpty)
            .GroupBy(c => (c.LastDay, c.Line.NeededIn, Known: c.OrderBy is not null)))
        {
            if (call.Key.LastDay is { } day)
                yield return new SummedDay(call.Key.Known ? DueKind.CallOff : DueKind.PartsHere, day, call.Key.NeededIn.Full());
        }
        foreach (var (from, on) in DueInService.YearlyVisits(house))
            yield return new SummedDay(DueKind.YearlyVisit, on, "", from);
        if (DueInService.CrewUntil(house) is { } crew)
            yield return new SummedDay(DueKind.CrewWarranty, crew, "");
        foreach (var kind in house.Units.Select(u => u.Kind?.Item).OfType<Item>().DistinctBy(k => k.Id))
        {
            if (DueInService.MakerUntil(house, kind) is { } maker)
                yield return new SummedDay(DueKind.MakerWarranty, maker, house.NameOf(kind));
        }
    }
}

using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Deliveries;
using TrimOut.Core.Plans.Hours;
using TrimOut.Core.Plans.Visits;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.CrewPapers;

/// <summary>Who does what, when: by day, and for each person.</summary>
internal static class WorkPlan
{
    public static Paper Paper { get; } = new("work-plan", "Work plan", "whoever works at the house",
        "Visits by day and by person: when, how long, who, and what must be ready before; by when the order must go out and each phase be ready; what each "
            + "phase took so far.",
        ShortCover.WithoutVisits,
        new Section("days", "Day by day", Days), new Section("ready", "To be ready by", ReadyBy),
        new Section("people", "For each person", Persons),
        new Section("hours", "Hours by phase", Hours) { NotForOwner = true });

    private static void Days(MarkdownWriter to, PaperData data)
    {
        if (VisitPlan.Order(data.House) is { } due)
            to.Say(due.IsTooLate(data.Date)
                ? Strong("Too late to order.") + Ours($"To be here on {due.Needed.OnPaper()} it had to be ordered by {due.By.OnPaper()}: "
                    + $"{due.Units.JoinOrDash()}. Ask the maker, or move the visit.")
                : Ours($"Not ordered yet, and to be ordered by {due.By.OnPaper()} at the latest, to be here on {due.Needed.OnPaper()}: "
                    + $"{due.Units.JoinOrDash()}."));
        if (VisitPlan.BoxesTooLate(data.House, data.Date).ToList() is [var first, ..] late)
        {
            var stands = AwaitedBox.Of(data.House, data.Report, data.Date).ToDictionary(b => b.Unit.Id, b => b.Why);
            to.Say(Strong("Not here in time.") + Ours($"Needed on {first.Needed.OnPaper()}: {late.Select(b => (Inline?)Join(": ",
                [b.Unit.Tag, stands.TryGetValue(b.Unit.Id, out var why) ? Said(why, data.House) : b.Comes.OnPaper()])).JoinOrDash("; ")}."));
        }
        if (Planned(data.House).Where(v => VisitPlan.Lacks(v).Contains(VisitFacts.Phase)).ToList() is { Count: > 0 } without)
            to.Say($"Of no phase, so that nothing is asked for before them: {without.Select(v => v.Show(VisitFacts.What)).JoinOrDash()}.");
        foreach (var (visit, says) in Planned(data.House).SelectMany(v => VisitDoubt.Of(v).Select(d => (v, d))))
            to.Say(Join(": ", [NameOf(data.House, visit.Item), Said(says, data.House)]));
        if (TwoAtOnce.Of(data.House).ToList() is { Count: > 0 } twice)
            to.Say($"At two visits at the same time: {twice.Select(Twice).JoinOrDash()}.");
        var open = VisitPlan.Open(data.House);
        to.Filled(["Day", "From", "Lasts, hours", "Visit", "Phase", "Expected", "Must be ready before", "Note"], Planned(data.House).Select(v => Row(
            v.EntryOrNotYet(VisitFacts.On), v.Entry(VisitFacts.From), v.Entry(VisitFacts.Lasts), v.Entry(VisitFacts.What), v.Entry(VisitFacts.Phase),
            v.Expected.Select(c => c.Show(ContactFacts.Name)).JoinOrDash(), Before(v, open), v.Entry(VisitFacts.Note))), "No visit is planned.");
    }

    private static string Twice(TwoAtOnce twice) =>
        $"{twice.Who.Show(ContactFacts.Name)} ({twice.Visit.Show(VisitFacts.On)}: {Short(twice.Visit)}; {Short(twice.Other)})";

    private static string Short(Visit visit) => $"{visit.Show(VisitFacts.From)} {visit.Name}";

    private static void ReadyBy(MarkdownWriter to, PaperData data)
    {
        var open = VisitPlan.Open(data.House, data.Steps);
        to.Filled(["Last day", "Phase", "Not through it"], VisitPlan.ReadyBy(data.House, open).Select(d => Row(
            d.By < data.Date ? d.By.OnPaper() + Strong("Late") : d.By.OnPaper(), Ours(d.Open.Phase.Full()), d.Open.Who.JoinOrDash())),
            open.IsEmpty ? "Nothing is left to be done." : "No day is known to go back from: type the handover, or a visit with its phase.");
    }

    private static void Persons(MarkdownWriter to, PaperData data)
    {
        var planned = Planned(data.House).ToList();
        foreach (var contact in data.House.Contacts.Where(c => planned.Any(v => v.Expected.Any(e => e.Id == c.Id))))
        {
            to.Heading(3, $"{contact.Entry(ContactFacts.Name)}");
            to.Table(["Day", "From", "Lasts, hours", "Visit", "With", "Note"], planned.Where(v => v.Expected.Any(e => e.Id == contact.Id)).Select(v => Row(
                v.EntryOrNotYet(VisitFacts.On), v.Entry(VisitFacts.From), v.Entry(VisitFacts.Lasts), v.Entry(VisitFacts.What),
                v.Expected.Where(e => e.Id != contact.Id).Select(c => c.Show(ContactFacts.Name)).JoinOrDash(), v.Entry(VisitFacts.Note))));
        }
        if (!planned.Any(v => v.Expected.Any()))
            to.Say("Nobody is expected on a day yet.");
    }

    private static void Hours(MarkdownWriter to, PaperData data)
    {
        var known = PhaseHours.Of(data.Log, data.Steps).Where(p => p.Counted is not null).ToList();
        to.Filled(["Phase", "Hours", "Typed", "Of visits", "By marks, at least", "Units through it", "Hours a unit"], known.Select(p => Row(
            Ours(p.Phase.Full()), Shown(p.Counted), Shown(p.Typed), Shown(p.OfVisits), p.Marked > 0 ? Shown(p.Marked) : Dash,
            Ours($"{Number(p.Through)} of {Number(p.Units)}"), Shown(p.PerUnit))),
            "No hours are known yet: type them for a visit or a phase, or mark steps as they are done.");
    }

    private static Inline Shown(decimal? hours) => hours is { } known ? Figure(NumberText.Plain(Math.Round(known, 2))) : Dash;

    private static IEnumerable<Visit> Planned(House house) =>
        house.Visits.Where(v => v.State == VisitState.Planned).OrderBy(v => v.On is null).ThenBy(v => v.On).ThenBy(v => v.Item.Get(VisitFacts.From));

    private static Inline Before(Visit visit, ImmutableArray<OpenPhase> open) =>
        VisitPlan.Before(visit, open).Select(b => Ours($"{Ours(b.Phase.Full())}: {b.Who.JoinOrDash()}")).ToList() is { Count: > 0 } before
            ? Join("; ", [.. before]) : Dash;
}

using System.CommandLine;
using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Deliveries;
using TrimOut.Core.Plans.Visits;
using TrimOut.Desks;

namespace TrimOut.Verbs;

/// <summary><c>trimout people</c>: contacts, visits, and boxes that are not here or are to be reordered.</summary>
internal static class PeopleVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var calendar = new Option<string?>("--calendar")
        {
            Description = "Also write the visits to a file that calendars take in (iCalendar, .ics). A file that TrimOut wrote is written over.",
            HelpName = "file",
        };
        var verb = new Command("people",
            "List who has a part in the job, who comes when, and which boxes are not here, a line each with tabs between: contact, name, part, number; "
                + "visit, day, what, state, who is expected, from, hours, what must be ready before, done? where it may be done, "
                + "what it lacks, who is expected at which other visit at the same time, what speaks against its day; "
                + "box, unit, day expected, how it stands, reorder, the day on which it "
                + "is needed where it comes after that; order, last day, day on which the boxes are needed, units, late; "
                + "ready, day, phase, who, late.") { path, calendar, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var log = look.At(parsed.GetRequiredValue(path));
            var house = log.House;
            var today = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
            foreach (var contact in house.Contacts)
                Common.Row("contact", contact.Name, contact.Show(ContactFacts.Part), contact.Show(ContactFacts.Telephone));
            var open = VisitPlan.Open(house);
            var atOnce = TwoAtOnce.ByVisit(house);
            foreach (var visit in house.Visits)
                Common.Row("visit", visit.Show(VisitFacts.On), visit.Name, visit.Show(VisitFacts.State),
                    string.Join(", ", visit.Expected.Select(c => c.Name)),
                    visit.Show(VisitFacts.From), visit.Show(VisitFacts.Lasts),
                    string.Join("; ", VisitPlan.Before(visit, open).Select(b => $"{b.Phase.Full()}: {string.Join(", ", b.Who)}")),
                    VisitPlan.IsItDone(visit, open, today) is null ? "" : "done?",
                    string.Join(", ", VisitPlan.Lacks(visit).Select(f => f.Name)),
                    string.Join(", ", atOnce[visit.Id].Select(t => $"{t.Who.Name}: {t.Other.Name}")),
                    string.Join(" ", VisitDoubt.Of(visit).Select(d => d.In(house))));
            var tooLate = VisitPlan.BoxesTooLate(house, today).ToDictionary(b => b.Unit.Id);
            foreach (var box in AwaitedBox.Of(house, CheckReport.Of(house), today))
                Common.Row("box", box.Unit.Tag, box.Unit.Show(UnitFacts.ExpectedOn), box.Why.In(house), box.Reorder ? "reorder" : "",
                    tooLate.TryGetValue(box.Unit.Id, out var late) ? Iso(late.Needed) : "");
            if (VisitPlan.Order(house) is { } due)
                Common.Row("order", Iso(due.By), Iso(due.Needed), string.Join(", ", due.Units), due.IsTooLate(today) ? "late" : "");
            foreach (var ready in VisitPlan.ReadyBy(house, open))
                Common.Row("ready", Iso(ready.By), ready.Open.Phase.Full(), string.Join(", ", ready.Open.Who), ready.By < today ? "late" : "");
            if (parsed.GetValue(calendar) is { } file)
                CalendarFile.Write(file, log, today).OrEnd(ExitCode.CannotCreate);
            return look.End(ExitCode.Fine);
        });
        return verb;
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

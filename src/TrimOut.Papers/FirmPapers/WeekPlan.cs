using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.FirmPapers;

/// <summary>Who is where on which day of a week, over houses, and what is due in it.</summary>
internal static class WeekPlan
{
    private static readonly string[] Weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];

    /// <summary>The days of a week.</summary>
    private const int Days = 7;

    public static void Write(MarkdownWriter to, FirmData data)
    {
        var until = data.Date.AddDays(Days - 1);
        var first = data.Date.OnPaper();
        var last = until.OnPaper();
        to.Say($"The visits that are planned from {first} to {last}, person by person; then what is due by then, or late.");
        var visits = data.Summaries.SelectMany(s => s.Visits.Select(v => (House: s, Visit: v)))
            .Where(v => v.Visit.On >= data.Date && v.Visit.On <= until)
            .OrderBy(v => v.Visit.On).ThenBy(v => v.Visit.From).ThenBy(v => v.House.Name, StringComparer.Ordinal).ToList();
        var firm = FirmVisits.Of(data.Summaries.Concat(data.Elsewhere));
        to.Heading(2, "For each person");
        foreach (var person in visits.SelectMany(v => v.Visit.Expected).Distinct(SameName.Comparer).Order(StringComparer.Ordinal))
        {
            to.Heading(3, $"{person}");
            if (data.Summaries.SelectMany(s => s.People).Where(p => SameName.Comparer.Equals(p.Name, person)).Select(p => p.Telephone).Distinct().ToList()
                is { Count: > 0 } numbers)
                to.Say($"Telephone: {numbers.JoinOrDash()}");
            Table(to, visits.Where(v => v.Visit.Expected.Contains(person, SameName.Comparer)), person, firm);
        }
        if (visits.Where(v => v.Visit.Expected.IsEmpty).ToList() is { Count: > 0 } nobodys)
        {
            to.Heading(3, "Nobody is named yet");
            Table(to, nobodys, null, firm);
        }
        if (visits.Count == 0)
            to.Say("No visit is planned.");
        to.Heading(2, "Due and late");
        to.Table(["Day", "House", "What is due", "Which"], data.Summaries.SelectMany(s => s.Due(data.Date, Days).Select(d => (s.Name, Due: d)))
            .Where(d => d.Due.Kind != DueKind.Visit || d.Due.On < data.Date).OrderBy(d => d.Due.On).ThenBy(d => d.Name, StringComparer.Ordinal)
            .Select(d => Row(d.Due.On is { } on ? Day(on) : Ours("at once"), d.Name, Kind(d.Due, data.Date), Which(d.Due))), "Nothing is due.");
    }

    private static void Table(MarkdownWriter to, IEnumerable<(HouseSummary House, SummedVisit Visit)> visits, string? person, FirmVisits firm) =>
        to.Table(["Day", "From", "Lasts, hours", "House", "Address", "Also that day", "Visit", "Phase", "With", "Must be ready before"], visits.Select(v => Row(
            Day(v.Visit.On!.Value),
            v.Visit.From is { } from ? Clock(from) : Dash,
            v.Visit.Lasts is { } hours ? Figure(NumberText.Plain(hours)) : Dash,
            v.House.Name, v.House.Address.Length > 0 ? v.House.Address : Dash,
            person is null ? Dash : Also(firm.Beside(v.House, v.Visit, person).ToList(), v.Visit), v.Visit.What,
            v.Visit.Phase is { } phase ? Ours(phase.Full()) : Dash,
            v.Visit.Expected.Where(e => !SameName.Comparer.Equals(e, person)).JoinOrDash(),
            v.Visit.Before.IsEmpty ? Dash : Beside([.. v.Visit.Before.Select(b => WithBehind(Ours(b.Phase.Full()), ":") + b.Who.JoinOrDash())
                .Select((b, at) => at < v.Visit.Before.Length - 1 ? WithBehind(b, ";") : b)]))));

    private static Inline Day(DateOnly day) => Ours(Weekdays[(int)day.DayOfWeek]) + day.OnPaper();

    private static Inline Also(List<AlsoExpected> also, SummedVisit visit) => also.Count == 0 ? Dash : Beside(
    [
        .. also.Select(a => (Where: (Inline)string.Join(' ', new[]
        {
            a.House, a.On == visit.On ? "" : a.On.OnPaper(), a.From is { } from ? Clock(from) : "",
        }.Where(w => w.Length > 0)), a.AtTheSameTime)).Select(a => a.AtTheSameTime ? Strong("At the same time:") + a.Where : a.Where)
            .Select((a, at) => at < also.Count - 1 ? WithBehind(a, ";") : a),
    ]);

    private static string Clock(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static Inline Kind(SummedDay due, DateOnly today) => due.Kind switch
    {
        DueKind.Drywall => due.What.Length == 0 ? Ours("Drywall starts") : Ours("Drywall starts; not ready before it"),
        DueKind.Handover => due.What.Length == 0 ? Ours(Phase.Handover.Full()) : Ours("Handover; not ready before it"),
        DueKind.BoxTooLate when due.TooLate is { } late => late.Visit.Length == 0 ? Ours($"Boxes come on {late.Comes.OnPaper()}, after they must be here")
            : Ours($"Boxes come on {late.Comes.OnPaper()}, after the visit: {late.Visit}"),
        DueKind.Visit => Ours("Visit that nobody said took place"),
        DueKind.Order => Ours("Last day to order units"),
        DueKind.OrderHere => Ours("Units not ordered, to be here by then; how long their order takes is not known"),
        DueKind.CallOff => Ours("Last day to call off parts"),
        DueKind.PartsHere => Ours("Parts to be here by then; how long parts take is not typed"),
        DueKind.Reorder => Ours("To be ordered again: did not arrive, or came wrong"),
        DueKind.Box => due.On < today ? Ours("Boxes that did not come") : Ours("Boxes expected"),
        DueKind.YearlyVisit => Ours("yearly visit"),
        DueKind.CrewWarranty => Ours("The crew's warranty ends"),
        _ => Ours("A maker's warranty ends"),
    };

    private static Inline Which(SummedDay due) => due.What.Length == 0 ? Dash : due.Kind is DueKind.CallOff or DueKind.PartsHere ? Ours(due.What) : due.What;
}

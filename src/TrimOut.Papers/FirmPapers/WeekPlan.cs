using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Firm;
using TrimOut.Core.Units;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.FirmPapers;

/// <summary>Who is where on which day of a week, over all houses, and what is due in it.</summary>
internal static class WeekPlan
{
    /// <summary>The days of a week.</summary>
    private const int Days = 7;

    public static void Write(MarkdownWriter to, FirmData data)
    {
        var until = data.Date.AddDays(Days - 1);
        var first = data.Date.OnPaper();
        var last = until.OnPaper();
        to.Say($"The visits that are planned from {first} to {last} over all houses, person by person; then what is due by then, or late.");
        var visits = data.Summaries.SelectMany(s => s.Visits.Select(v => (House: s.Name, Visit: v)))
            .Where(v => v.Visit.On >= data.Date && v.Visit.On <= until)
            .OrderBy(v => v.Visit.On).ThenBy(v => v.Visit.From).ThenBy(v => v.House, StringComparer.Ordinal).ToList();
        to.Heading(2, "For each person");
        foreach (var person in visits.SelectMany(v => v.Visit.Expected).Distinct(SameName.Comparer).Order(StringComparer.Ordinal))
        {
            to.Heading(3, $"{person}");
            Table(to, visits.Where(v => v.Visit.Expected.Contains(person, SameName.Comparer)), person);
        }
        if (visits.Where(v => v.Visit.Expected.IsEmpty).ToList() is { Count: > 0 } nobodys)
        {
            to.Heading(3, "Nobody is named yet");
            Table(to, nobodys, null);
        }
        if (visits.Count == 0)
            to.Say("No visit is planned.");
        to.Heading(2, "Due and late");
        to.Table(["Day", "House", "What is due", "Which"], data.Summaries.SelectMany(s => s.Due(data.Date, Days).Select(d => (s.Name, Due: d)))
            .Where(d => d.Due.Kind != DueKind.Visit || d.Due.On < data.Date).OrderBy(d => d.Due.On).ThenBy(d => d.Name, StringComparer.Ordinal)
            .Select(d => Row(d.Due.On is { } on ? on.OnPaper() : Ours("at once"), d.Name, Kind(d.Due, data.Date), Which(d.Due))), "Nothing is due.");
    }

    private static void Table(MarkdownWriter to, IEnumerable<(string House, SummedVisit Visit)> visits, string? person) =>
        to.Table(["Day", "From", "Lasts, hours", "House", "Visit", "Phase", "With", "Must be ready before"], visits.Select(v => Row(
            v.Visit.On!.Value.OnPaper(),
            v.Visit.From is { } from ? from.ToString("HH:mm", CultureInfo.InvariantCulture) : Dash,
            v.Visit.Lasts is { } hours ? Figure(NumberText.Plain(hours)) : Dash,
            v.House, v.Visit.What, v.Visit.Phase is { } phase ? Ours(phase.Full()) : Dash,
            v.Visit.Expected.Where(e => !SameName.Comparer.Equals(e, person)).JoinOrDash(),
            v.Visit.Before.Select(p => (Inline?)Ours(p.Full())).JoinOrDash())));

    private static Inline Kind(SummedDay due, DateOnly today) => due.Kind switch
    {
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

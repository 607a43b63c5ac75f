using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.Writing;

/// <summary>Who has a part in the job, and who is expected when.</summary>
internal static class People
{
    /// <summary>Contacts with their numbers; nothing where there are none.</summary>
    public static void WriteContacts(MarkdownWriter to, IEnumerable<Contact> contacts)
    {
        var rows = contacts.Select(c => Row(
            c.Entry(ContactFacts.Part), c.Entry(ContactFacts.Name), c.Entry(ContactFacts.Telephone), c.Entry(ContactFacts.Note))).ToList();
        if (rows.Count > 0)
            to.Table(["Part in the job", "Whom to call", "Telephone", "Note"], rows);
    }

    /// <summary>Visits that are still to come, those that should have been and were not marked too; nothing where there are none.</summary>
    public static void WriteVisits(MarkdownWriter to, PaperData data)
    {
        var rows = data.House.Visits.Where(v => v.State == VisitState.Planned)
            .Select(v => Row(v.EntryOrNotYet(VisitFacts.On), v.Entry(VisitFacts.What), v.Entry(VisitFacts.Phase),
                v.Expected.Select(c => c.Show(ContactFacts.Name)).JoinOrDash(), v.Entry(VisitFacts.Note))).ToList();
        if (rows.Count > 0)
            to.Table(["Day", "Visit", "Phase", "Expected", "Note"], rows);
        AskIfDone(to, data);
    }

    /// <summary>Asks of each visit that is still planned and may be done whether it is.</summary>
    public static void AskIfDone(MarkdownWriter to, PaperData data)
    {
        var planned = data.House.Visits.Where(v => v.State == VisitState.Planned).ToList();
        var open = planned.Count == 0 ? [] : VisitPlan.Open(data.House, data.Steps);
        foreach (var visit in planned)
        {
            if (VisitPlan.IsItDone(visit, open, data.Date, data.Steps) is { } why)
                to.Say(Inline.Strong("Is it done?") + (why == MayBeDone.DayIsPast
                    ? Inline.Ours($"{visit.Entry(VisitFacts.What)} was planned for {visit.Entry(VisitFacts.On)}, and nobody said that it took place.")
                    : Inline.Ours($"Every step of {Inline.Ours(visit.Phase!.Value.Full())} is marked, and {visit.Entry(VisitFacts.What)} is still planned.")));
        }
    }
}

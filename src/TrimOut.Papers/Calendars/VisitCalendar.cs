using System.Collections.Immutable;
using System.Globalization;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;

namespace TrimOut.Papers.Calendars;

/// <summary>The visits of a house as an iCalendar file, RFC 5545, which any calendar takes in.</summary>
public static class VisitCalendar
{
    /// <summary>What such a file of ours says of who made it.</summary>
    public const string Maker = "-//TrimOut//Visits//EN";

    /// <summary>The file: each visit that has a day. Taken in again it changes the same entries, for each keeps its name.</summary>
    /// <param name="log">The house with its history.</param>
    /// <param name="today">The day on which it is written, so that a visit of an earlier day is asked about; null where only the house is to speak.</param>
    /// <remarks>
    /// A visit with a time of day is in the time zone of the house (with its rules in the file), and by no zone where the house names none; one without is all
    /// day. One that was called off, or was taken back whole, comes as cancelled. The same house gives the same file on the same day.
    /// </remarks>
    public static string Write(HouseLog log, DateOnly? today = null)
    {
        var house = log.House;
        var begun = log.Changes.IsEmpty ? House.RootId : log.Changes[0].Id.ToString();
        var zone = new JobItself(house).Item.Get(HouseFacts.TimeZone);
        var calendar = new Ical.Net.Calendar { ProductId = Maker };
        // The rules of the zone from the year of the first visit on, whenever the file is written.
        var timed = house.Visits.Where(v => v.Item.Get(VisitFacts.From) is not null).Select(v => v.On).Min();
        if (zone is not null && timed is { } first)
        {
            var from = new DateTime(first.Year, 1, 1, 0, 0, 0, DateTimeKind.Unspecified);
            calendar.AddTimeZone(VTimeZone.FromDateTimeZone(zone, from, includeHistoricalData: false));
        }
        var open = VisitPlan.Open(house);
        var changes = new EntryChanges(log);
        calendar.Events.AddRange(house.Visits.Where(v => v.On is not null)
            .Select(v => Event(v, begun, zone, changes.Of(v), v.State == VisitState.CalledOff, Told(v, open, today)))
            .Concat(changes.Gone.Where(v => v.On is not null).Select(v => Event(v, begun, zone, changes.Of(v), isOff: true, ""))));
        return new CalendarSerializer().SerializeToString(calendar) ?? "";
    }

    private static CalendarEvent Event(Visit visit, string begun, string? zone, (int Times, DateTimeOffset Last) changed, bool isOff, string told)
    {
        var (house, on, from) = (visit.House, visit.On!.Value, visit.Item.Get(VisitFacts.From) is { } at ? at : (TimeOnly?)null);
        var entry = new CalendarEvent
        {
            Uid = $"{visit.Id}@{begun}",
            DtStamp = new CalDateTime(changed.Last.UtcDateTime, "UTC", true),
            Sequence = changed.Times,
            Summary = $"{house.Name}: {visit.Name}",
            Start = from is { } time ? new CalDateTime(on, time, zone) : new CalDateTime(on),
            Status = isOff ? EventStatus.Cancelled : EventStatus.Confirmed,
            Description = told,
        };
        if (new JobItself(house).Item.Get(HouseFacts.Address) is { } address)
            entry.Location = address;
        if (from is not null && visit.Item.Get(VisitFacts.Lasts) is > 0 and var hours)
            entry.Duration = Duration.FromMinutes((int)Math.Round(hours * 60));
        return entry;
    }

    private static string Told(Visit visit, ImmutableArray<OpenPhase> open, DateOnly? today) => string.Join("\n", new[]
    {
        VisitPlan.IsItDone(visit, open, today) is { } why ? AskIfDone(visit, why) : "",
        string.Join(", ", visit.Expected.Select(c => $"{c.Name} {c.Show(ContactFacts.Telephone)}".Trim())),
        visit.Item.Get(VisitFacts.Note) ?? "",
        string.Join("\n", VisitPlan.Before(visit, open).Select(b => string.Create(CultureInfo.InvariantCulture,
            $"{b.Phase.Full()} still open: {string.Join(", ", b.Who)}"))),
    }.Where(t => t.Length > 0));

    private static string AskIfDone(Visit visit, MayBeDone why) => (why == MayBeDone.DayIsPast
        ? string.Create(CultureInfo.InvariantCulture, $"Was planned for {visit.On!.Value:yyyy-MM-dd}")
        : $"Every step of {visit.Phase!.Value.Full()} is marked") + ": is it done?";
}

using System.Globalization;
using System.Text;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Papers.Calendars;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.Calendars;

/// <summary>The calendar is read back by a parser of a few lines that follows RFC 5545, 3.1 and 3.3, and not by the library that wrote it.</summary>
public class VisitCalendarTests
{
    private static TestJob Job(string zone = "Europe/London")
    {
        var job = new TestJob().Window("W01");
        job.Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.Address, "8 Towpath; rear, left"));
        if (zone.Length > 0)
            job.Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.TimeZone, zone));
        foreach (var visit in (string[])["2026-03-28 08:30-12:00 Hang, upstairs @Ash", "2026-03-29 08:30 Hang the rest", "2026-09-01 Handover", "No day yet"])
            job.Do(QuickPeople.Visit(job.House, visit, addUnknown: true).Value);
        return job;
    }

    /// <summary>Lines unfolded (3.1), each with name, parameters and value; texts without their escapes (3.3.11).</summary>
    private static List<List<(string Name, string With, string Value)>> Events(string text)
    {
        Assert.All(text.TrimEnd().Split("\r\n"), l => Assert.InRange(Encoding.UTF8.GetByteCount(l), 1, 75));
        var events = new List<List<(string, string, string)>>();
        foreach (var line in text.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n"))
        {
            if (line == "BEGIN:VEVENT")
                events.Add([]);
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (events.Count == 0 || colon < 0 || line.StartsWith("END", StringComparison.Ordinal))
                continue;
            var head = line[..colon].Split(';', 2);
            events[^1].Add((head[0], head.Length > 1 ? head[1] : "", line[(colon + 1)..].Replace("\\n", "\n", StringComparison.Ordinal)
                .Replace("\\,", ",", StringComparison.Ordinal).Replace("\\;", ";", StringComparison.Ordinal).Replace("\\\\", "\\", StringComparison.Ordinal)));
        }
        return events;
    }

    private static (string With, string Value) Of(List<(string Name, string With, string Value)> entry, string name) =>
        entry.Where(l => l.Name == name).Select(l => (l.With, l.Value)).Single();

    [Fact]
    public void EachVisitWithADayIsAnEntryWithWhenWhereWhoAndWhat()
    {
        var events = Events(VisitCalendar.Write(Job().Scribe.Log));
        Assert.Equal(3, events.Count);
        Assert.Equal(("TZID=Europe/London", "20260328T083000"), Of(events[0], "DTSTART"));
        Assert.Equal(210, Minutes(Of(events[0], "DURATION").Value));
        Assert.Equal("Test house: Hang, upstairs", Of(events[0], "SUMMARY").Value);
        Assert.Equal("8 Towpath; rear, left", Of(events[0], "LOCATION").Value);
        Assert.StartsWith("Ash\n", Of(events[0], "DESCRIPTION").Value, StringComparison.Ordinal);
        Assert.Contains("Walk-through still open: ", Of(events[0], "DESCRIPTION").Value, StringComparison.Ordinal);
        Assert.Equal(("VALUE=DATE", "20260901"), Of(events[2], "DTSTART"));
        Assert.Equal("CONFIRMED", Of(events[2], "STATUS").Value);
    }

    /// <summary>Directive 2000/84/EC (from memory): summer time begins at one o'clock GMT on the last Sunday in March.</summary>
    [Fact]
    public void TheRulesOfTheTimeZoneAreInTheFile()
    {
        var text = VisitCalendar.Write(Job().Scribe.Log);
        Assert.Contains("TZID:Europe/London", text, StringComparison.Ordinal);
        var daylight = text[text.IndexOf("BEGIN:DAYLIGHT", StringComparison.Ordinal)..text.IndexOf("END:DAYLIGHT", StringComparison.Ordinal)];
        Assert.Contains("TZOFFSETTO:+0100", daylight, StringComparison.Ordinal);
        Assert.Contains("BYDAY=-1SU", daylight, StringComparison.Ordinal);
        Assert.Contains("BYMONTH=3", daylight, StringComparison.Ordinal);
    }

    [Fact]
    public void AHouseThatNamesNoZoneHasTimesOfNone() =>
        Assert.Equal(("", "20260328T083000"), Of(Events(VisitCalendar.Write(Job("").Scribe.Log))[0], "DTSTART"));

    [Fact]
    public void AChangedVisitKeepsItsNameAndCountsUpAndOneThatIsCalledOffIsCancelled()
    {
        var job = Job();
        var before = Events(VisitCalendar.Write(job.Scribe.Log));
        job.Do(Deliver.CallOff(job.House.Visits.First()).Value);
        var after = Events(VisitCalendar.Write(job.Scribe.Log));
        Assert.Equal(Of(before[0], "UID"), Of(after[0], "UID"));
        Assert.Equal(3, after.Select(e => Of(e, "UID")).Distinct().Count());
        Assert.Equal("CANCELLED", Of(after[0], "STATUS").Value);
        Assert.True(Number(after[0]) > Number(before[0]));
    }

    private static int Number(List<(string Name, string With, string Value)> entry) => int.Parse(Of(entry, "SEQUENCE").Value, CultureInfo.InvariantCulture);

    /// <summary>RFC 5545, 3.8.7.4: the higher number is the later edition, and one that counts back is thrown away by whoever has the other.</summary>
    [Fact]
    public void AMoveThatIsTakenBackCountsUpTooAndSoDoesANewTimeZone()
    {
        var job = Job();
        var visit = job.House.Visits.First();
        List<(string Name, string With, string Value)> Entry() => Events(VisitCalendar.Write(job.Scribe.Log))
            .Single(e => Of(e, "UID").Value.StartsWith(visit.Id, StringComparison.Ordinal));
        job.Do(SetFact.Typed(job.House, visit.Item, VisitFacts.On, "2026-04-02"));
        var moved = Entry();
        Assert.True(job.Scribe.Undo().Ok);
        var back = Entry();
        Assert.Equal(("20260402T083000", "20260328T083000"), (Of(moved, "DTSTART").Value, Of(back, "DTSTART").Value));
        Assert.True(Number(back) > Number(moved));
        Assert.True(string.CompareOrdinal(Of(back, "DTSTAMP").Value, Of(moved, "DTSTAMP").Value) >= 0);
        job.Do(SetFact.Typed(job.House, job.House.Job, HouseFacts.TimeZone, "Europe/Paris"));
        Assert.True(Number(Entry()) > Number(back));
    }

    /// <summary>A calendar that took the visit in has it still: without a word it would stay there.</summary>
    [Fact]
    public void AVisitThatIsTakenBackWholeIsCancelled()
    {
        var job = Job();
        job.Do(QuickPeople.Visit(job.House, "2026-05-05 Power", addUnknown: true).Value);
        var there = Events(VisitCalendar.Write(job.Scribe.Log)).Single(e => Of(e, "SUMMARY").Value.EndsWith("Power", StringComparison.Ordinal));
        Assert.True(job.Scribe.Undo().Ok);
        var gone = Events(VisitCalendar.Write(job.Scribe.Log)).Single(e => Of(e, "UID") == Of(there, "UID"));
        Assert.Equal(("CANCELLED", "20260505"), (Of(gone, "STATUS").Value, Of(gone, "DTSTART").Value));
        Assert.True(Number(gone) > Number(there));
    }

    [Fact]
    public void AVisitOfAnEarlierDayIsAskedAbout()
    {
        var events = Events(VisitCalendar.Write(Job().Scribe.Log, new DateOnly(2026, 3, 29)));
        Assert.StartsWith("Was planned for 2026-03-28: is it done?\n", Of(events[0], "DESCRIPTION").Value, StringComparison.Ordinal);
        Assert.DoesNotContain(events[1], l => l.Value.Contains("is it done?", StringComparison.Ordinal));
    }

    [Fact]
    public void TheSameHouseGivesTheSameFile()
    {
        var log = Job().Scribe.Log;
        Assert.Equal(VisitCalendar.Write(log), VisitCalendar.Write(log));
    }

    private static int Minutes(string duration) => (int)System.Xml.XmlConvert.ToTimeSpan(duration).TotalMinutes;
}

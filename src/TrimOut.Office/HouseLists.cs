using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Parts;

namespace TrimOut.Office;

/// <summary>
/// What a house says, as lists that the office's views read: houses, units, phases, open items, tests and parts. The same house gives the same text.
/// </summary>
/// <remarks>Lengths are in millimeters, resistances in ohms, voltages in volts, days as year-month-day; what is not known is left out.</remarks>
public static class HouseLists
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The lists of a house.</summary>
    /// <param name="house">The house.</param>
    public static string Of(House house)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            var report = CheckReport.Of(house);
            json.WriteStartObject();
            json.WriteStartObject("house");
            OfHouse(json, house, report);
            json.WriteEndObject();
            List(json, "units", house.Units, OfUnit);
            List(json, "phases", PhaseNames.All, (j, phase) => OfPhase(j, house, report, phase));
            List(json, "open_items", Open(house, report), (j, item) => item(j));
            List(json, "tests", house.Runs, OfRun);
            List(json, "parts", HouseParts.Of(house), (j, line) => OfPart(j, house, line));
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static void OfHouse(Utf8JsonWriter json, House house, CheckReport report)
    {
        var progress = PhaseNames.All.Select(p => Progress.Of(house, p)).ToList();
        Text(json, "name", house.Name);
        Text(json, "client", house.Job.Get(HouseFacts.Client));
        Text(json, "address", house.Job.Get(HouseFacts.Address));
        Text(json, "crew", house.Job.Get(HouseFacts.Crew));
        json.WriteNumber("units", house.Units.Length);
        Text(json, "phase", InWork(progress)?.Full());
        json.WriteNumber("steps_done", progress.Sum(p => p.Done));
        json.WriteNumber("steps", progress.Sum(p => p.Total));
        json.WriteNumber("open_stops", report.OpenStops.Count());
        json.WriteNumber("open_cautions", report.Findings.Count(f => f is { Open: true, Check.Severity: Severity.Caution }));
        Day(json, "drywall_on", house.Job.Get(HouseFacts.DrywallOn));
        Day(json, "handover_on", house.Job.Get(HouseFacts.HandoverOn));
    }

    /// <summary>The furthest phase that is begun; where that is complete the next that is not, else the last one left behind; null where all are.</summary>
    private static Phase? InWork(List<Progress> progress)
    {
        var open = PhaseNames.All.Zip(progress).Where(p => !p.Second.Complete).Select(p => (Phase?)p.First).ToList();
        var furthest = PhaseNames.All.Zip(progress).Where(p => p.Second.Done > 0).Select(p => (Phase?)p.First).LastOrDefault();
        return open.Find(p => furthest is null || p >= furthest) ?? open.LastOrDefault();
    }

    private static void OfUnit(Utf8JsonWriter json, Unit unit)
    {
        Text(json, "tag", unit.Tag);
        Text(json, "room", unit.Window.Room?.Name);
        Text(json, "floor", unit.Window.Room?.Floor);
        Text(json, "kind", unit.Kind?.Name);
        Choice(json, "lead_side", unit.LeadSide);
        Choice(json, "power", unit.Item.Get(UnitFacts.Power));
        Text(json, "phase", Progress.Current(unit)?.Full());
        Text(json, "next_step", Progress.Next(unit)?.Label);
        Number(json, "order_width_mm", unit.Item.Get(UnitFacts.OrderWidth)?.Millimetres);
        Number(json, "order_height_mm", unit.Item.Get(UnitFacts.OrderHeight)?.Millimetres);
        Day(json, "ordered_on", unit.Item.Get(UnitFacts.OrderedOn));
        Day(json, "expected_on", unit.Item.Get(UnitFacts.ExpectedOn));
        Choice(json, "arrived", unit.Item.Get(UnitFacts.Arrival));
        Text(json, "serial", unit.Item.Get(UnitFacts.Serial));
        Text(json, "hub", unit.Hub?.Name);
    }

    private static void OfPhase(Utf8JsonWriter json, House house, CheckReport report, Phase phase)
    {
        var progress = Progress.Of(house, phase);
        json.WriteNumber("number", (int)phase + 1);
        Text(json, "phase", phase.Full());
        json.WriteNumber("steps_done", progress.Done);
        json.WriteNumber("steps", progress.Total);
        json.WriteNumber("open_stops", report.StopsIn(phase));
    }

    private static IEnumerable<Action<Utf8JsonWriter>> Open(House house, CheckReport report) =>
    [
        .. report.Findings.Where(f => f.Open).Select(f => (Action<Utf8JsonWriter>)(json =>
        {
            Choice(json, "sort", (Severity?)f.Check.Severity);
            Text(json, "about", house.NameOf(f.Subject));
            Text(json, "phase", f.Check.Phase.Full());
            Text(json, "says", f.Found.Message.In(house));
            Text(json, "to_clear", f.Found.Mend.In(house));
            Text(json, "check_id", f.Check.Id);
        })),
        .. house.PunchItems.Where(p => p.Open).Select(p => (Action<Utf8JsonWriter>)(json =>
        {
            Text(json, "sort", "written");
            Text(json, "about", p.About is { } about ? house.NameOf(about) : null);
            Text(json, "phase", p.Phase?.Full());
            Text(json, "says", p.Item.Get(PunchFacts.What));
        })),
    ];

    private static void OfRun(Utf8JsonWriter json, HomeRun run)
    {
        Text(json, "unit", run.Unit.Tag);
        foreach (var (name, fact) in new[] { ("first_loop_ohm", RunFacts.FirstLoop), ("first_apart_ohm", RunFacts.FirstApart),
            ("first_to_frame_ohm", RunFacts.FirstToFrame), ("second_loop_ohm", RunFacts.SecondLoop), ("second_apart_ohm", RunFacts.SecondApart),
            ("second_to_frame_ohm", RunFacts.SecondToFrame) })
        {
            Number(json, name, run.Item.Get(fact)?.Ohms);
        }
        Number(json, "open_volt", run.Item.Get(RunFacts.OpenVolts)?.Volts);
        Number(json, "loaded_volt", run.Item.Get(RunFacts.LoadedVolts)?.Volts);
        Choice(json, "polarity", run.Item.Get(RunFacts.Polarity));
        Text(json, "panel", run.Panel?.Name);
        Number(json, "output", run.Output);
    }

    private static void OfPart(Utf8JsonWriter json, House house, PartLine line)
    {
        Choice(json, "part_group", (PartGroup?)line.Group);
        Text(json, "part", line.Part.In(house));
        Number(json, "count", line.Count);
        json.WriteBoolean("at_least", line.AtLeast);
        Text(json, "unit", line.Unit);
        Text(json, "counted_from", line.CountedFrom.In(house));
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> rows, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var row in rows)
        {
            json.WriteStartObject();
            write(json, row);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>A text; the sign 0, which the database's texts can't have, is left out.</summary>
    private static void Text(Utf8JsonWriter json, string name, string? text)
    {
        if (text is { Length: > 0 })
            json.WriteString(name, text.Replace("\0", "", StringComparison.Ordinal));
    }

    private static void Number(Utf8JsonWriter json, string name, decimal? number)
    {
        if (number is { } known)
            json.WriteNumber(name, known);
    }

    private static void Day(Utf8JsonWriter json, string name, DateOnly? day) => Text(json, name, day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    private static void Choice<T>(Utf8JsonWriter json, string name, T? choice) where T : struct, Enum =>
        Text(json, name, choice is { } said ? KebabCase.Of(said) : null);
}

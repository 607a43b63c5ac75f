using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Verbs;

/// <summary><c>trimout check</c>: all findings of a house.</summary>
internal static class CheckVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var json = new Option<bool>("--json") { Description = "Write JSON rather than text." };
        var waiting = new Option<bool>("--all-made")
        {
            Description = "Ask for every check to be made: end with 1 also while one waits for a detail, or passes only by a value that nobody checked against "
                + "its maker's sheet.",
        };
        var verb = new Command("check", "Hold a house against every check. Ends with 1 when there are open stops. 0 says only that none was found: checks that "
            + "wait for details were not made, and are counted in the last line.") { path, json, waiting, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var report = CheckReport.Of(look.At(parsed.GetRequiredValue(path)).House);
            Console.Out.Write(parsed.GetValue(json) ? ShownText.Json(Json(report)) : Text(report));
            return look.End(report.OpenStops.Any() || (parsed.GetValue(waiting) && !report.Waiting.None) ? ExitCode.OpenStops : ExitCode.Fine);
        });
        return verb;
    }

    internal static string Text(CheckReport report)
    {
        var text = new StringBuilder();
        foreach (var finding in report.Findings)
        {
            var waived = finding.Waiver is null ? "" : ", waived";
            var by = report.UncheckedBehind(finding) is { Count: > 0 } some
                ? $", by values that nobody checked: {string.Join(", ", some.Select(f => f.Label))}" : "";
            text.Append(CultureInfo.InvariantCulture,
                $"{KebabCase.Of(finding.Check.Severity),-8}{report.House.NameOf(finding.Subject)}: {finding.Found.Message.In(report.House)} " +
                    $"[{finding.Check.Id}{waived}{by}]\n");
            text.Append(CultureInfo.InvariantCulture, $"        {finding.Found.Mend.In(report.House)}\n");
        }
        foreach (var missing in report.Missing)
            text.Append(CultureInfo.InvariantCulture,
                $"missing {report.House.NameOf(missing.Subject)}: {missing.NotChecked.Missing.In(report.House)} [{missing.Check.Id}]\n");
        foreach (var unread in report.Unread)
            text.Append(CultureInfo.InvariantCulture,
                $"unread  {report.House.NameOf(unread.Subject)}: passes by values that nobody checked: {Values(report, unread)} [{unread.Check.Id}]\n");
        if (report.WaitingForSheets is { None: false } sheets)
            text.Append(CultureInfo.InvariantCulture, $"{NumberText.Counted(sheets.Checks, "check waits", "checks wait")} for "
                + $"{NumberText.Counted(sheets.Facts, "value")} of makers' sheets: trimout kit lists the parts\n");
        var doubts = DoubtfulVisit.Of(report.House).ToList();
        foreach (var (visit, why) in doubts)
            text.Append(CultureInfo.InvariantCulture, $"visit   {visit.Name}, {visit.Show(VisitFacts.On)}: {why}\n");
        if (doubts.Count > 0)
            text.Append(CultureInfo.InvariantCulture, $"{NumberText.Counted(doubts.Count, "doubt")} about the days of visits, and no findings: ")
                .Append("P on the job sheet, trimout people and the work plan have them too\n");
        var unreads = report.Unread.IsEmpty ? "" : $", {NumberText.Counted(report.Unread.Length, "passes", "pass")} by values that nobody checked";
        text.Append(CultureInfo.InvariantCulture,
            $"{NumberText.Counted(report.OpenStops.Count(), "open stop")}, {NumberText.Counted(report.Findings.Length, "finding")}, " +
                $"{report.Missing.Length} not checked{unreads}, {report.Passed} fine\n");
        return text.ToString();
    }

    private static string Values(CheckReport report, PassedUnread unread) => string.Join(", ", unread.Values.Select(v => LabelOf(report.House, v)));

    private static string LabelOf(House house, FieldRef value) => house.Find(value.Item) is { } part && FactTable.Find(part.Kind, value.Field) is { } fact
        ? $"{fact.Label} of {house.NameOf(part)}" : value.Field;

    internal static string Json(CheckReport report)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping
        }))
        {
            json.WriteStartObject();
            json.WriteString("house", report.House.Name);
            json.WriteNumber("openStops", report.OpenStops.Count());
            json.WriteNumber("fine", report.Passed);
            json.WriteStartArray("findings");
            foreach (var finding in report.Findings)
            {
                Begin(json, report, finding.Check, finding.Subject);
                json.WriteString("severity", KebabCase.Of(finding.Check.Severity));
                json.WriteString("message", finding.Found.Message.In(report.House));
                json.WriteString("mend", finding.Found.Mend.In(report.House));
                json.WriteString("field", finding.Found.Mends.Field);
                json.WriteBoolean("waived", !finding.Open);
                json.WriteStartArray("unchecked");
                foreach (var fact in report.UncheckedBehind(finding))
                    json.WriteStringValue(fact.Label);
                json.WriteEndArray();
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteStartArray("notChecked");
            foreach (var missing in report.Missing)
            {
                Begin(json, report, missing.Check, missing.Subject);
                json.WriteString("missing", missing.NotChecked.Missing.In(report.House));
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteStartArray("passedUnread");
            foreach (var unread in report.Unread)
            {
                Begin(json, report, unread.Check, unread.Subject);
                json.WriteStartArray("values");
                foreach (var value in unread.Values)
                    json.WriteStringValue(LabelOf(report.House, value));
                json.WriteEndArray();
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteStartArray("visits");
            foreach (var (visit, why) in DoubtfulVisit.Of(report.House))
            {
                json.WriteStartObject();
                json.WriteString("visit", visit.Name);
                json.WriteString("on", visit.Show(VisitFacts.On));
                json.WriteString("doubt", why);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Begin(Utf8JsonWriter json, CheckReport report, CheckInfo check, Item subject)
    {
        json.WriteStartObject();
        json.WriteString("check", check.Id);
        json.WriteString("phase", KebabCase.Of(check.Phase));
        json.WriteString("kind", KebabCase.Of(subject.Kind));
        json.WriteString("subject", report.House.NameOf(subject));
    }
}

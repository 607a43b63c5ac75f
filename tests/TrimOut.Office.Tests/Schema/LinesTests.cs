using TrimOut.Core.History;
using TrimOut.HouseFile.Texts;
using TrimOut.Testing;

namespace TrimOut.Office.Tests.Schema;

/// <summary>The office takes a line exactly where the program reads it from a file.</summary>
public class LinesTests(OfficeServer server) : IClassFixture<OfficeServer>
{
    private const string Good = """{"v":1,"id":"a-1:7","stamp":9,"at":"2026-02-28T08:00:00+01:00","by":"A","what":"B","edits":[]}""";

    private static readonly string[] Edits =
    [
        """{"add":"a","kind":"window","under":"house"}""", """{"add":"a","kind":"window"}""", """{"add":"a","kind":1,"under":"house"}""",
        """{"add":1,"kind":"window"}""",
        """{"put":"a","field":"b","value":"c"}""", """{"put":"a","field":"b","value":null}""", """{"put":"a","field":"b","value":3}""",
        """{"put":"a","field":"b"}""",
        """{"put":"a","field":"b","value":"c","over":["d:1"]}""", """{"put":"a","field":"b","value":"c","over":["d:0"]}""",
        """{"put":"a","field":"b","value":"c","over":"d:1"}""",
        """{"put":"a","field":"b","value":"c","over":[1]}""", """{"put":"a","put":"a","field":"b","value":"c"}""", """{"undo":"a:1"}""",
        """{"undo":"a"}""", """{"undo":1}""",
        """{"undo":"a:1","put":"b"}""", "{}", "1", "null", "[]", """{"later":1}""", """{"put":"a","later":{"x":[1]}}""", """{"later":1,"later":2}""",
        """{"add":"a","kind":"spaceship","under":"house"}""", """{"put":"a\u0000b","field":"b","value":"\u0000"}""",
        """{"put":"a","field":"b","value":"\ud800"}""",
        """{"put":"a","field":"b","value":"\ud83d\ude00"}""", """{"put":"a","field":"b","value":"\\u0000"}""",
    ];

    private static readonly (string From, string To)[] Slips =
    [
        ("\"v\":1", "\"v\":2"), ("\"v\":1", "\"v\":0"), ("\"v\":1", "\"v\":1.0"), ("\"v\":1", "\"v\":\"1\""), ("\"v\":1,", ""), ("a-1:7", "a-1:07"),
        ("a-1:7", "a_1:7"),
        ("a-1:7", ":7"), ("a-1:7", "a:1234567890123456"), ("a-1:7", "a:0"), ("\"a-1:7\"", "7"), ("\"stamp\":9", "\"stamp\":0"),
        ("\"stamp\":9", "\"stamp\":9.5"),
        ("\"stamp\":9", "\"stamp\":1e3"), ("\"stamp\":9", "\"stamp\":1000000000000000"), ("\"stamp\":9", "\"stamp\":\"9\""), ("2026-02-28", "2026-02-29"),
        ("2026-02-28", "2024-02-29"),
        ("2026-02-28", "2026-13-01"), ("2026-02-28", "2026-00-10"), ("2026-02-28", "2026-04-31"), ("2026-02-28", "3026-02-28"),
        ("2026-02-28", "0926-02-28"), ("T08", "T24"),
        ("+01:00", "Z"), ("+01:00", "z"), ("+01:00", "+14:00"), ("+01:00", "+14:01"), ("+01:00", "+1:00"), ("+01:00", ""), ("08:00:00", "08:00:60"),
        ("08:00:00", "08:00:00.1234567"),
        ("08:00:00", "08:00:00.12345678"), ("08:00:00", "08:00:00."), ("\"by\":\"A\"", "\"by\":null"), ("\"by\":\"A\",", ""),
        ("\"what\":\"B\"", "\"what\":[]"),
        ("\"edits\":[]", "\"edits\":{}"), ("\"edits\":[]", "\"edits\":null"), (",\"edits\":[]", ""), ("\"edits\":[]", "\"edits\":[],\"more\":1"),
        ("\"by\":\"A\"", "\"by\":\"A\",\"by\":\"A\""),
        ("}", "} "), ("}", "}}"), ("}", ""), ("{", "["), ("\"A\"", "\"\\x\""), ("\"A\"", "'A'"), ("\"A\"", "\"\t\""), ("\"A\"", "\"\\u0000\""),
        ("A", "Ä€😀"),
    ];

    [OfficeFact]
    public async Task TheOfficeTakesALineExactlyWhereTheProgramDoes()
    {
        string[] lines = [Good, "", "null", "[]", "\"x\"", .. Edits.Select(e => Good.Replace("[]", $"[{e}]", StringComparison.Ordinal)),
            .. Slips.Select(s => Good.Replace(s.From, s.To, StringComparison.Ordinal)),
            .. (await File.ReadAllLinesAsync(Path.Combine(Repository.Root, "sample-jobs", "ridge-house", HistoryText.FileName))).Take(20)];
        Assert.True(lines.Count(l => ChangeJson.Read(l).Ok) > 40 && lines.Count(l => !ChangeJson.Read(l).Ok) > 50);
        foreach (var line in lines)
        {
            var said = await Sql.Try(server.Owner, $"select coalesce('refused: ' || why, 'taken') from office.read_line($line${line}$line$)");
            Assert.True((said == "taken") == ChangeJson.Read(line).Ok, $"{line}\noffice: {said}\nprogram: {ChangeJson.Read(line).Reason}");
        }
    }
}

using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using TrimOut.Core.History;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Texts;

/// <summary>The published schema and the reader say the same of every line, sound or broken in any of many ways.</summary>
public class SchemaAgainstReaderTests
{
    private const int Lines = 20_000;

    private static readonly JsonSchema Schema =
        JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root, "docs", "house-file.md")).Split("```json\n")[1].Split("```")[0]);

    private static readonly string[] Values =
    [
        "1", "0", "-1", "1.5", "1.0", "1e0", "2", "999999999999999", "1000000000000000", "9223372036854775807", "-9223372036854775808", "1e20", "true", "null",
        "[]", "{}", "[1]", "\"\"",
        "\"a:1\"", "\"a:0\"", "\"a:01\"", "\"a\"", "\":1\"", "\"a b:1\"", "\"a:999999999999999\"", "\"a:1000000000000000\"", "\"a\\u202e:1\"", "\"a:1:2\"",
        "\"a:+1\"", "\"a:1\\n\"",
        "\"2026-03-02T08:00:00+00:00\"", "\"2026-03-02T08:00:00Z\"", "\"2026-03-02T08:00:00.1234567-03:30\"", "\"2026-03-02T08:00:00.12345678Z\"",
        "\"2026-03-02T08:00:00.Z\"",
        "\"2026-02-30T08:00:00Z\"", "\"2026-03-02T24:00:00Z\"", "\"2026-03-02T08:00:60Z\"", "\"2026-03-02T08:00:00+14:00\"", "\"2026-03-02T08:00:00+14:30\"",
        "\"2026-03-02T08:00:00\"",
        "\"2026-03-02\"", "\"2026-03-02 08:00:00Z\"", "\"2026-03-02t08:00:00z\"", "\"0001-01-01T00:00:00+01:00\"", "\"9999-12-31T23:59:59-01:00\"",
        "\"yesterday\"", "\" 2026-03-02T08:00:00Z\"",
        "[\"a:1\"]", "[\"a:1\",\"b:2\"]", "[\"a\"]", "[null]", "[[]]", "\"room\"", "\"no-such-kind\"", "\"\\u001b[31m\"",
        "[{\"add\":\"x\",\"kind\":\"room\",\"under\":\"house\"}]", "[{\"undo\":\"a:1\"}]", "[{\"move\":\"x\"}]", "[12]", "[{}]",
        "[{\"put\":\"x\",\"undo\":\"a:1\"}]",
    ];

    private static readonly string[] Names =
        ["v", "id", "stamp", "at", "by", "what", "edits", "mood", "add", "kind", "under", "put", "field", "value", "over", "undo", "unit"];

    private static bool ByReader(string line) => ChangeJson.Read(line).Ok;

    private static bool BySchema(string line)
    {
        using var json = JsonDocument.Parse(line);
        return Schema.Evaluate(json.RootElement, new EvaluationOptions { RequireFormatValidation = true }).IsValid;
    }

    private static JsonObject Sound(Random random)
    {
        string[] edits =
        [
            """{"put":"house","field":"name","value":"Elm"}""", """{"put":"house","field":"name","value":null,"over":["a:2","b-c:3"]}""",
            """{"add":"w","kind":"window","under":"house"}""", """{"add":"w","kind":"skylight","under":"house"}""", """{"undo":"a:7"}""",
            """{"turn":"w","by":90}""", """{"put":"house","field":"name","value":"Elm","unit":"mm"}""",
        ];
        var chosen = string.Join(",", Enumerable.Range(0, random.Next(4)).Select(_ => edits[random.Next(edits.Length)]));
        return JsonNode.Parse(
            $$"""{"v":1,"id":"a:{{random.Next(1, 99)}}","stamp":{{random.Next(1, 99)}},"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[""" +
            $$"""{{chosen}}]}""")!.AsObject();
    }

    /// <summary>One thing more, one less, or another value, at the top or in an edit.</summary>
    private static void Break(JsonObject line, Random random)
    {
        var edits = (line["edits"] as JsonArray)?.OfType<JsonObject>().ToList() ?? [];
        var at = edits.Count > 0 && random.Next(2) == 0 ? edits[random.Next(edits.Count)] : line;
        var name = random.Next(3) == 0 || at.Count == 0 ? Names[random.Next(Names.Length)] : at.ElementAt(random.Next(at.Count)).Key;
        if (random.Next(4) == 0)
            at.Remove(name);
        else
            at[name] = JsonNode.Parse(Values[random.Next(Values.Length)]);
    }

    [Fact]
    public void TheReaderTakesWhatTheSchemaAllowsAndRefusesWhatItRefuses()
    {
        var random = new Random(20260302);
        var (taken, refused) = (0, 0);
        for (var number = 0; number < Lines; number++)
        {
            var json = Sound(random);
            for (var breaks = random.Next(3); breaks > 0; breaks--)
                Break(json, random);
            var line = json.ToJsonString();
            var allowed = BySchema(line);
            Assert.True(allowed == ByReader(line),
                $"The schema {(allowed ? "allows" : "refuses")} it, the reader does not: {line} ({ChangeJson.Read(line).Reason})");
            (taken, refused) = allowed ? (taken + 1, refused) : (taken, refused + 1);
        }
        Assert.True(taken > Lines / 10 && refused > Lines / 10, $"{taken} taken, {refused} refused");
    }

    [Fact]
    public void WhatTheReaderTookIsWrittenAgainAndAllowed()
    {
        var random = new Random(7);
        for (var number = 0; number < 2_000; number++)
        {
            var line = Sound(random).ToJsonString();
            var written = ChangeJson.Write(ChangeJson.Read(line).Value);
            Assert.True(JsonNode.DeepEquals(JsonNode.Parse(line), JsonNode.Parse(written)), $"{line}\n{written}");
            Assert.True(BySchema(written), written);
        }
    }

    [Theory]
    [InlineData("\"stamp\":1,", "\"stamp\":-1,", "The stamp -1 is out of its range")]
    [InlineData("\"stamp\":1,", "\"stamp\":9223372036854775807,", "The stamp 9223372036854775807 is out of its range")]
    [InlineData("\"by\":\"b\"", "\"by\":\"b\",\"by\":\"c\"", "\"by\" is there twice")]
    [InlineData("\"value\":\"Elm\"", "\"value\":12", "\"value\" is no text")]
    [InlineData("\"what\":\"w\"", "\"what\":\"w\",\"mood\":1", "has no \"mood\"")]
    public void WhatIsWrongIsSaid(string part, string instead, string reason)
    {
        const string sound =
            """{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[{"put":"house","field":"name","value":"Elm"}]}""";
        Assert.True(ByReader(sound));
        var read = HouseFile.Texts.HistoryText.Read(sound + "\n" + sound.Replace(part, instead, StringComparison.Ordinal));
        Assert.StartsWith("Line 2: ", read.Reason, StringComparison.Ordinal);
        Assert.Contains(reason, read.Reason, StringComparison.Ordinal);
    }
}

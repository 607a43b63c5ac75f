using System.Text.Json;
using Json.Schema;
using TrimOut.HouseFile.Texts;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Texts;

/// <summary>The schema that docs/house-file.md publishes, held by a validator of JSON Schema 2020-12 against what the program writes.</summary>
public class SchemaTests
{
    private const string Sound =
        """{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"b","what":"w","edits":[""" +
        """{"put":"house","field":"name","value":"Elm","over":["a:2"]}]}""";

    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root, "docs", "house-file.md"))
        .Split("```json\n")[1].Split("```")[0]);

    public static TheoryData<string> Histories =>
    [
        .. Directory.GetDirectories(Path.Combine(Repository.Root, "sample-jobs")).Select(f => Path.Combine(f, HistoryText.FileName))
            .Concat(Directory.GetFiles(Path.Combine(Repository.Root, "tests", "TrimOut.HouseFile.Tests", "old-files"), "*.jsonl"))
            .Select(f => Path.GetRelativePath(Repository.Root, f)),
    ];

    private static bool Valid(string line)
    {
        using var json = JsonDocument.Parse(line);
        return Schema.Evaluate(json.RootElement, new EvaluationOptions { RequireFormatValidation = true }).IsValid;
    }

    [Theory]
    [MemberData(nameof(Histories))]
    public void EveryLineOfARealExportIsValid(string history)
    {
        var lines = HistoryText.Write(HistoryText.Read(File.ReadAllText(Path.Combine(Repository.Root, history))).Value)
            .Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.True(Valid(line), line));
    }

    [Fact]
    public void ASoundLineIsValid() => Assert.True(Valid(Sound));

    [Theory]
    [InlineData("\"v\":1,", "")]
    [InlineData("\"v\":1", "\"v\":2")]
    [InlineData("\"a:1\"", "\"a\"")]
    [InlineData("\"a:1\"", "\"a:0\"")]
    [InlineData("\"stamp\":1", "\"stamp\":0")]
    [InlineData("\"stamp\":1", "\"stamp\":1.5")]
    [InlineData("2026-03-02T08:00:00+00:00", "yesterday")]
    [InlineData("\"by\":\"b\"", "\"by\":null")]
    [InlineData("\"what\":\"w\",", "\"what\":\"w\",\"mood\":\"fine\",")]
    [InlineData(",\"value\":\"Elm\"", "")]
    [InlineData("\"value\":\"Elm\"", "\"value\":12")]
    [InlineData("\"over\":[\"a:2\"]", "\"over\":\"a:2\"")]
    [InlineData("{\"put\":\"house\",\"field\":\"name\",\"value\":\"Elm\",\"over\":[\"a:2\"]}", "{\"add\":\"w\",\"kind\":\"window\"}")]
    [InlineData("{\"put\":\"house\",\"field\":\"name\",\"value\":\"Elm\",\"over\":[\"a:2\"]}", "{\"undo\":\"a:2\",\"put\":\"house\"}")]
    public void ABrokenLineIsNot(string part, string instead)
    {
        var broken = Sound.Replace(part, instead, StringComparison.Ordinal);
        Assert.NotEqual(Sound, broken);
        Assert.False(Valid(broken), broken);
    }
}

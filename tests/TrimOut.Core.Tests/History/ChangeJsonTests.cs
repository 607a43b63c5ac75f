using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Tests.History;

/// <summary>The line of a change, as docs/house-file.md says it.</summary>
public class ChangeJsonTests
{
    private static readonly Dictionary<string, string> Whole = new()
    {
        ["v"] = "1",
        ["id"] = "\"office:1\"",
        ["stamp"] = "1",
        ["at"] = "\"2026-03-02T08:00:00+01:00\"",
        ["by"] = "\"TC\"",
        ["what"] = "\"w\"",
        ["edits"] = "[]",
    };

    public static TheoryData<string> Keys => [.. Whole.Keys];

    [Fact]
    public void EveryKindOfEditComesBackAsItWasWritten()
    {
        var change = new Change(new ChangeId("office", 7), 9, new DateTimeOffset(2026, 3, 2, 8, 0, 0, 500, TimeSpan.FromHours(-7)), "Tom \"T\" Ü", "what",
            [
                new Edit.Add("w", ItemKind.Window, "root"), new Edit.Put("w", "tag", "W01", []), new Edit.Put("w", "tag", null, []),
                new Edit.Put("w", "tag", "W02", [new ChangeId("office", 6), new ChangeId("van-2", 3)]), new Edit.Undo(new ChangeId("van-2", 3)),
                new Edit.Unread("{\"later\":[1,{\"a\":null}]}"),
            ]);
        var line = ChangeJson.Write(change);
        Assert.Equal("{\"v\":1,\"id\":\"office:7\",\"stamp\":9,\"at\":\"2026-03-02T08:00:00.5-07:00\"," +
            "\"by\":\"Tom \\\"T\\\" Ü\",\"what\":\"what\",\"edits\":[" +
            "{\"add\":\"w\",\"kind\":\"window\",\"under\":\"root\"},{\"put\":\"w\",\"field\":\"tag\",\"value\":\"W01\"}," +
            "{\"put\":\"w\",\"field\":\"tag\",\"value\":null},{\"put\":\"w\",\"field\":\"tag\",\"value\":\"W02\",\"over\":[\"office:6\",\"van-2:3\"]}," +
            "{\"undo\":\"van-2:3\"},{\"later\":[1,{\"a\":null}]}]}", line);
        var again = ChangeJson.Read(line).Value;
        Assert.Equal((change.Id, change.Stamp, change.SaidAt, change.SaidAt.Offset, change.By, change.What),
            (again.Id, again.Stamp, again.SaidAt, again.SaidAt.Offset, again.By, again.What));
        Assert.Equal(change.Edits.Select(e => e.GetType()), again.Edits.Select(e => e.GetType()));
        Assert.Equal(line, ChangeJson.Write(again));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void APartThatIsMissingIsNamed(string key) => Refused(Line(Whole.Where(p => p.Key != key)), $"\"{key}\" is missing.");

    [Theory]
    [MemberData(nameof(Keys))]
    public void APartThatIsThereTwiceIsNamed(string key) => Refused(Line(Whole.Append(new(key, Whole[key]))), $"\"{key}\" is there twice.");

    [Theory]
    [InlineData("v", "\"1\"", "\"v\" is no number.")]
    [InlineData("v", "0", "There is no form 0.")]
    [InlineData("v", "2", "by a newer TrimOut (form 2; this one reads up to 1)")]
    [InlineData("id", "1", "\"id\" is no text.")]
    [InlineData("id", "null", "\"id\" is no text.")]
    [InlineData("stamp", "null", "\"stamp\" is no number.")]
    [InlineData("stamp", "1.5", "\"stamp\" is no whole number in its range.")]
    [InlineData("stamp", "1e25", "\"stamp\" is no whole number in its range.")]
    [InlineData("stamp", "0", "The stamp 0 is out of its range")]
    [InlineData("stamp", "1000000000000000", "The stamp 1000000000000000 is out of its range")]
    [InlineData("by", "7", "\"by\" is no text.")]
    [InlineData("what", "[]", "\"what\" is no text.")]
    [InlineData("edits", "{}", "\"edits\" is no list.")]
    [InlineData("edits", "[7]", "An edit is no object.")]
    public void APartThatMakesNoSenseIsNamed(string key, string value, string why) => Refused(With(key, value), why);

    [Theory]
    [InlineData("stamp", "1.0")]
    [InlineData("stamp", "999999999999999")]
    [InlineData("id", "\"office:999999999999999\"")]
    [InlineData("id", "\"Van-2:10\"")]
    public void TheLastThatMakesSenseIsTaken(string key, string value) => Assert.True(ChangeJson.Read(With(key, value)).Ok);

    [Theory]
    [InlineData("office:0")]
    [InlineData("office:01")]
    [InlineData("office:-1")]
    [InlineData("office:1000000000000000")]
    [InlineData("office:1x")]
    [InlineData("office:")]
    [InlineData("office")]
    [InlineData(":1")]
    [InlineData("of fice:1")]
    [InlineData("a:b:1")]
    public void WhatNamesNoChangeIsRefused(string id) => Refused(With("id", $"\"{id}\""), $"\"{id}\" names no change");

    // RFC 3339 with seconds, as the form of the file has it.
    [Theory]
    [InlineData("2026-03-02T08:00:00Z", true)]
    [InlineData("2026-03-02T08:00:00-07:00", true)]
    [InlineData("1999-12-31T23:59:59+00:00", true)]
    [InlineData("2026-03-02T08:00:00.5Z", true)]
    [InlineData("2026-03-02T08:00:00.1234567+01:00", true)]
    [InlineData("3026-03-02T08:00:00Z", false)]
    [InlineData("0026-03-02T08:00:00Z", false)]
    [InlineData("2026-03-02T08:00:00", false)]
    [InlineData("2026-03-02T08:00:00.1", false)]
    [InlineData("2026-03-02T08:00:00+1:00", false)]
    [InlineData("2026-03-02T08:00:00.+01:00", false)]
    [InlineData("2026-03-02T08:00:00.Z", false)]
    [InlineData("2026-03-02T08:00:00 Z", false)]
    [InlineData("2026-03-02T08:00Z", false)]
    [InlineData("2026-03-02T08:00:0Z", false)]
    [InlineData("2026-02-30T08:00:00Z", false)]
    [InlineData("Z", false)]
    [InlineData("", false)]
    public void ATimeIsADayAndATimeWithItsOffset(string at, bool time)
    {
        var read = ChangeJson.Read(With("at", $"\"{at}\""));
        Assert.Equal(time, read.Ok);
        if (!time)
            Assert.Equal($"\"{at}\" is no time.", read.Reason);
    }

    [Theory]
    [InlineData("{}", "this one has nothing")]
    [InlineData("{\"add\":\"a\",\"kind\":\"window\"}", "this one has add, kind")]
    [InlineData("{\"put\":\"a\",\"field\":\"f\"}", "this one has put, field")]
    [InlineData("{\"put\":\"a\",\"field\":\"f\",\"value\":\"v\",\"undo\":\"office:1\"}", "this one has put, field, value, undo")]
    [InlineData("{\"put\":\"a\",\"field\":\"f\",\"value\":\"v\",\"field\":\"g\"}", "\"field\" is there twice.")]
    [InlineData("{\"put\":\"a\",\"field\":1,\"value\":\"v\"}", "\"field\" is no text.")]
    [InlineData("{\"put\":\"a\",\"field\":\"f\",\"value\":1}", "\"value\" is no text.")]
    [InlineData("{\"put\":\"a\",\"field\":\"f\",\"value\":\"v\",\"over\":\"office:1\"}", "\"over\" is no list.")]
    [InlineData("{\"put\":\"a\",\"field\":\"f\",\"value\":\"v\",\"over\":[\"office\"]}", "\"over\" names no changes.")]
    [InlineData("{\"put\":\"a\",\"field\":\"f\",\"value\":\"v\",\"over\":[1]}", "\"over\" is no text.")]
    [InlineData("{\"add\":\"a\",\"kind\":[],\"under\":\"b\"}", "\"kind\" is no text.")]
    [InlineData("{\"add\":\"a\",\"kind\":\"window\",\"under\":null}", "\"under\" is no text.")]
    [InlineData("{\"undo\":\"office\"}", "\"office\" names no change.")]
    public void AnEditThatMakesNoSenseIsRefused(string edit, string why) => Refused(With("edits", $"[{edit}]"), why);

    // What only a newer program writes is kept whole and as it came, also where its parts are not what ours are.
    [Theory]
    [InlineData("{\"later\":{\"a\":[1]}}")]
    [InlineData("{\"put\":\"a\",\"field\":1,\"value\":\"v\",\"unit\":\"mm\"}")]
    [InlineData("{\"put\":[\"a\",\"b\"],\"field\":\"f\",\"value\":\"v\"}")]
    [InlineData("{\"add\":7}")]
    [InlineData("{\"undo\":{\"of\":\"office:1\"}}")]
    [InlineData("{\"add\":\"a\",\"kind\":\"lift\",\"under\":\"b\"}")]
    public void AnEditOfANewerProgramIsKeptAsItCame(string edit)
    {
        var edits = ChangeJson.Read(With("edits", $"[{edit},{{\"undo\":\"office:1\"}}]")).Value.Edits;
        Assert.Equal<Edit>([new Edit.Unread(edit), new Edit.Undo(new ChangeId("office", 1))], edits);
    }

    [Fact]
    public void WhatIsNoChangeAtAllIsRefused()
    {
        Refused("7", "it does not hold an object");
        Refused("[]", "it does not hold an object");
        Refused("", "The line is no change");
        Refused("{", "The line is no change");
        Refused(Line(Whole) + "{}", "The line is no change");
        Refused(Line(Whole.Append(new("later", "1"))), "A change of form 1 has no \"later\".");
    }

    // The form stands first, so that nothing else is read of a line that a newer program wrote.
    [Fact]
    public void ALineOfANewerFormIsNotReadOn() =>
        Refused("{\"v\":2,\"later\":1,\"id\":7}", "The line was written by a newer TrimOut (form 2; this one reads up to 1).");

    [Theory]
    [InlineData("{\"v\":1,\"id\"", 1)]
    [InlineData("{\"v\":12,", 12)]
    [InlineData("{\"v\":1}", 0)]
    [InlineData("{\"v\":,", 0)]
    [InlineData("{\"v\":x,", 0)]
    [InlineData("{\"v\":-1,", 0)]
    [InlineData(" {\"v\":1,", 0)]
    [InlineData("{\"w\":1,", 0)]
    [InlineData("", 0)]
    public void TheFormOfALineIsReadWithoutTheRest(string line, int version) => Assert.Equal(version, ChangeJson.VersionOf(line));

    private static string Line(IEnumerable<KeyValuePair<string, string>> parts) => "{" + string.Join(',', parts.Select(p => $"\"{p.Key}\":{p.Value}")) + "}";

    private static string With(string key, string value) => Line(Whole.Select(p => p.Key == key ? new(key, value) : p));

    private static void Refused(string line, string why)
    {
        var read = ChangeJson.Read(line);
        Assert.False(read.Ok);
        Assert.Contains(why, read.Reason, StringComparison.Ordinal);
    }
}

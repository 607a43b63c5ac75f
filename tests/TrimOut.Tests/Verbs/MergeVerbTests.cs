namespace TrimOut.Tests.Verbs;

public sealed class MergeVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    private void Import(string house, string csv)
    {
        File.WriteAllText(_run.In("s.csv"), csv);
        Assert.Equal(0, _run.Run("import", house, "s.csv", "--by", house).Code);
    }

    [Fact]
    public void TwoCopiesBecomeOneAndTheSameInEitherOrder()
    {
        Assert.Equal(0, _run.Run("new", "office").Code);
        File.Copy(_run.In("office.trimout"), _run.In("site.trimout"));
        Import("office.trimout", "tag,width\nW01,30\n");
        Import("site.trimout", "tag,width\nW02,40\n");
        var tried = _run.Run("merge", "office.trimout", "site.trimout", "--try");
        Assert.Contains("Import s.csv: 1 window", tried.Output);
        Assert.Equal(0, _run.Run("merge", "office.trimout", "site.trimout").Code);
        Assert.Equal(0, _run.Run("merge", "site.trimout", "office.trimout").Code);
        Assert.Equal("", _run.Run("merge", "site.trimout", "office.trimout").Output);
        var history = _run.Run("history", "office.trimout").Output;
        Assert.Equal(3, history.Split('\n').Length - 1);
        Assert.Equal(history, _run.Run("history", "site.trimout").Output);
    }

    [Fact]
    public void AnotherHouseIsNotMerged()
    {
        Assert.Equal(0, _run.Run("new", "a").Code);
        Assert.Equal(0, _run.Run("new", "b").Code);
        var refused = _run.Run("merge", "a.trimout", "b.trimout");
        Assert.Equal(65, refused.Code);
        Assert.Contains("no change in common", refused.Error);
    }

    [Fact]
    public void AConflictIsListedAndSettledByAChoice()
    {
        File.WriteAllText(_run.In("a.jsonl"), Start +
            """{"v":1,"id":"a:2","stamp":2,"at":"2026-03-02T09:00:00+00:00","by":"Ada","what":"x","edits":[""" +
            """{"put":"w","field":"rough-width","value":"914.4 mm"}]}""");
        File.WriteAllText(_run.In("b.jsonl"), Start +
            """{"v":1,"id":"b:1","stamp":2,"at":"2026-03-02T10:00:00+00:00","by":"Bo","what":"x","edits":[""" +
            """{"put":"w","field":"rough-width","value":"939.8 mm"}]}""");
        Assert.Equal(0, _run.Run("restore", "a", "a.jsonl").Code);
        var merged = _run.Run("merge", "a.trimout", "b.jsonl");
        Assert.Equal(2, merged.Code);
        Assert.Contains("W01: Rough width: a) 36\" by Ada on 2026-03-02 09:00, b) 37\" by Bo on 2026-03-02 10:00.", merged.Error);
        Assert.Equal(1, _run.Run("conflicts", "a.trimout").Code);
        Assert.Equal(64, _run.Run("conflicts", "a.trimout", "--choose", "1c").Code);
        Assert.Equal(0, _run.Run("conflicts", "a.trimout", "--choose", "1a").Code);
        Assert.Contains("914.4 mm", _run.Run("history", "a.trimout").Output.Split('\n')[^2]);
        Assert.Equal(0, _run.Run("conflicts", "a.trimout").Code);
    }

    [Fact]
    public void WhatOneRemovedWhileTheOtherWentOnIsListedAndSettledByAChoice()
    {
        File.WriteAllText(_run.In("a.jsonl"), Start +
            """{"v":1,"id":"a:2","stamp":2,"at":"2026-03-02T09:00:00+00:00","by":"Ada","what":"x","edits":[{"put":"w","field":"removed","value":"a:1"}]}""");
        File.WriteAllText(_run.In("b.jsonl"), Start +
            """{"v":1,"id":"b:1","stamp":2,"at":"2026-03-02T10:00:00+00:00","by":"Bo","what":"x","edits":[""" +
            """{"put":"w","field":"rough-width","value":"939.8 mm"}]}""");
        Assert.Equal(0, _run.Run("restore", "a", "a.jsonl").Code);
        var merged = _run.Run("merge", "a.trimout", "b.jsonl");
        Assert.Equal(2, merged.Code);
        Assert.Contains(
            "W01: Ada removed it on 2026-03-02 09:00, while Bo went on with it (Rough width). a) leave it removed, b) bring it back with all it had.",
            merged.Error);
        Assert.Equal(1, _run.Run("conflicts", "a.trimout").Code);
        Assert.Equal(0, _run.Run("conflicts", "a.trimout", "--choose", "1b").Code);
        Assert.Contains("W01", _run.Run("windows", "a.trimout").Output);
    }

    private const string Start =
        """{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"Ada","what":"New","edits":[""" +
        """{"put":"house","field":"name","value":"Elm"},{"add":"w","kind":"window","under":"house"},{"put":"w","field":"tag","value":"W01"}]}""" + "\n";
}

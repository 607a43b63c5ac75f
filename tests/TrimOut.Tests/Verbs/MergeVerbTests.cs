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
        Assert.Equal(64, _run.Run("conflicts", "a.trimout", "--choose", "1a").Code);
        Assert.Equal(64, _run.Run("conflicts", "a.trimout", "--choose", Listed().Single() + "-c").Code);
        Assert.Equal(0, _run.Run("conflicts", "a.trimout", "--choose", Listed().Single() + "-a").Code);
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
        Assert.Equal(0, _run.Run("conflicts", "a.trimout", "--choose", Listed().Single() + "-b").Code);
        Assert.Contains("W01", _run.Run("windows", "a.trimout").Output);
    }

    private List<string> Listed() =>
        [.. _run.Run("conflicts", "a.trimout").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split('\t')[0])];

    /// <summary>Of two details the first is settled, and the list gets shorter: what stood second in it keeps its name.</summary>
    [Fact]
    public void AChoiceMeansTheDetailThatWasReadWhateverWasSettledSince()
    {
        foreach (var (name, by, width, height) in new[] { ("a:2", "Ada", "900 mm", "1200 mm"), ("b:1", "Bo", "910 mm", "1210 mm") })
        {
            File.WriteAllText(_run.In(name[0] + ".jsonl"), Start +
                $$$"""{"v":1,"id":"{{{name}}}","stamp":2,"at":"2026-03-02T09:00:00+00:00","by":"{{{by}}}","what":"x","edits":[""" +
                $$$"""{"put":"w","field":"rough-width","value":"{{{width}}}"},{"put":"w","field":"rough-height","value":"{{{height}}}"},""" +
                $$$"""{"put":"w","field":"note","value":"{{{by}}}"}]}""");
        }
        Assert.Equal(0, _run.Run("restore", "a", "a.jsonl").Code);
        Assert.Equal(2, _run.Run("merge", "a.trimout", "b.jsonl").Code);
        var read = Listed();
        Assert.Equal(3, read.Distinct().Count());
        var both = _run.Run("conflicts", "a.trimout", "--choose", read[0] + "-a", "--choose", read[0] + "-b");
        Assert.Equal((64, 3), (both.Code, Listed().Count));
        Assert.Contains($"Settled {read[0]}: W01: ", _run.Run("conflicts", "a.trimout", "--choose", read[0] + "-a").Error);
        Assert.Equal(read.Skip(1), Listed());
        Assert.Equal(64, _run.Run("conflicts", "a.trimout", "--choose", read[0] + "-a").Code);
        Assert.Equal(1, _run.Run("conflicts", "a.trimout", "--choose", read[1] + "-a").Code);
        Assert.Equal(read.Skip(2), Listed());
    }

    private const string Start =
        """{"v":1,"id":"a:1","stamp":1,"at":"2026-03-02T08:00:00+00:00","by":"Ada","what":"New","edits":[""" +
        """{"put":"house","field":"name","value":"Elm"},{"add":"w","kind":"window","under":"house"},{"put":"w","field":"tag","value":"W01"}]}""" + "\n";
}

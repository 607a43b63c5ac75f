using System.Text.Json;

namespace TrimOut.Tests.Verbs;

public sealed class HouseVerbsTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    private void Begin() => Assert.Equal(0, _run.Run("new", "elm", "--name", "Elm Street 12", "--by", "Ada").Code);

    [Fact]
    public void ANewHouseIsAFileWithItsHistory()
    {
        Begin();
        var history = _run.Run("history", "elm.trimout");
        Assert.Equal(0, history.Code);
        Assert.Contains("\"by\":\"Ada\",\"what\":\"New house Elm Street 12\"", history.Output);
        Assert.Empty(history.Error);
    }

    [Fact]
    public void AHouseThatIsThereIsNotBegunAgain()
    {
        Begin();
        var before = File.ReadAllBytes(_run.In("elm.trimout"));
        var again = _run.Run("new", "elm");
        Assert.Equal(73, again.Code);
        Assert.Contains("is there already", again.Error);
        Assert.Equal(before, File.ReadAllBytes(_run.In("elm.trimout")));
    }

    [Fact]
    public void RoomsAreNamedOrderedAndMergedByLines()
    {
        Begin();
        File.WriteAllText(_run.In("s.csv"), "tag,room,floor\nW01,Kichen,Main\nW02,Kitchen,Main\nW03,Kitchen,Upper\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
        var lines = "@Kichen\tmerge-into\tKitchen/Main\n@Kitchen/Main\torder\t9\n@Kitchen/Upper\tname\tPantry\n@Kichen\tname\tx\n";
        var set = _run.RunWith(lines, "set", "elm.trimout");
        Assert.Equal("1\n2\n3\n", set.Output);
        Assert.Contains("Line 4: There is no room Kichen.", set.Error);
        var windows = _run.Run("windows", "elm.trimout").Output.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["W03,Pantry,Upper", "W01,Kitchen,Main", "W02,Kitchen,Main"], windows.Skip(1).Select(l => string.Join(',', l.Split(',').Take(3))));
    }

    /// <summary>Whoever reads nothing but the checks misses no visit that can't be: it is said there, and is no finding.</summary>
    [Fact]
    public void ACheckSaysWhichVisitsAreInDoubtAndCountsThemAsNoFindings()
    {
        Begin();
        var before = _run.Run("check", "elm.trimout");
        Assert.DoesNotContain("visit", before.Output);
        Assert.Equal(0, _run.RunWith("contact\tnew\tAsh Example, crew, 555 0101\nvisit\tnew\t2026-09-05 Power\n"
            + "visit\tnew\t2026-09-07 08:00-12:00 Hang @Ash\nvisit\tnew\t2026-09-07 11:30 Pair @Ash\n", "set", "elm.trimout").Code);
        var check = _run.Run("check", "elm.trimout");
        Assert.Equal(before.Code, check.Code);
        var lines = check.Output.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["visit   Power, 2026-09-05: Hang, a phase before it, is planned for 2026-09-07.",
            "visit   Hang, 2026-09-07: Ash Example is expected at the same time at Pair, 11:30.",
            "2 doubts about the days of visits, and no findings: P on the job sheet, trimout people and the work plan have them too"], lines[^4..^1]);
        Assert.Equal(before.Output.ReplaceLineEndings("\n").Split('\n')[^2], lines[^1]);
        using var json = JsonDocument.Parse(_run.Run("check", "--json", "elm.trimout").Output);
        Assert.Equal(["Power", "Hang"], json.RootElement.GetProperty("visits").EnumerateArray().Select(v => v.GetProperty("visit").GetString()));
    }

    [Fact]
    public void DetailsOfAnythingAreSetByNameAndLabelAndAllAreListed()
    {
        Begin();
        var lines = "contact\tnew\tAsh Example, crew, 555 0101\nAsh Example\tCall after handover\tyes\nhouse\tClient\tSomebody\nRoller\tMotor volts\t12\n"
            + "panel\tnew\tP1\nP1\tlocation\tMechanical room\nvisit\tnew\t2026-09-07 Hang @Ash\nHang\tState\tdone\n";
        var set = _run.RunWith(lines, "set", "elm.trimout");
        Assert.Equal("1\n2\n3\n4\n5\n6\n7\n8\n", set.Output);
        Assert.Equal("contact\tAsh Example\tcrew\t555 0101\nvisit\t2026-09-07\tHang\tdone\tAsh Example\t\t\t\t\t\t\t\n",
            _run.Run("people", "elm.trimout").Output.ReplaceLineEndings("\n"));
        var details = _run.Run("set", "--details");
        Assert.Equal(0, details.Code);
        var rows = details.Output.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains("contact\ttelephone\tTelephone\t+1 555 0100", rows);
        Assert.Contains("unit\tlead-side\tLead side\tleft, right", rows);
        Assert.All(Core.Facts.FactTable.All.Where(f => !f.IsKeyed && f.Subject != Core.Houses.ItemKind.Waiver), f =>
            Assert.Contains(rows, r => r.Contains($"\t{f.Name}\t{f.Label}\t", StringComparison.Ordinal)));
        Assert.Equal(64, _run.Run("set").Code);
    }

    [Fact]
    public void WhatWasDoneInServiceIsRecordedByALineAndListedWithWhatIsDue()
    {
        Begin();
        File.WriteAllText(_run.In("s.csv"), "tag,room\nW01,Kitchen\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
        var set = _run.RunWith("W01\tserial\tA-1\nhouse\taccepted-on\t2026-10-01\nhouse\twarranty-term\t2 years\nW01\tout-of-level\t0\n"
            + "W01\tstep:clicked-in\tdone although: seen\n"
            + "service\tnew\tW01 replaced 2026-10-05 @Ash, serial B-7, claim C-17, motor grinds\nW01 replaced 2026-10-05\tClaim came to\tgranted\n",
            "set", "elm.trimout");
        Assert.Equal(("1\n2\n3\n4\n5\n6\n7\n", ""), (set.Output, set.Error));
        Assert.Equal("due\tnow\tW01 replaced 2026-10-05, to be done again: Clicked in.\n"
            + "due\tlater\tThe crew's warranty ends on 2028-09-30 (days left: 726).\n"
            + "done\t2026-10-05\tW01\treplaced\tAsh\tmotor grinds\tA-1\tB-7\tC-17\tgranted\n",
            _run.Run("service", "elm.trimout", "--date", "2026-10-05").Output.ReplaceLineEndings("\n"));
        Assert.Equal(64, _run.Run("service", "elm.trimout", "--date", "soon").Code);
    }

    [Fact]
    public void TheHistoryAsTextMakesTheSameHouseAgain()
    {
        Begin();
        var history = _run.Run("history", "elm.trimout").Output;
        Assert.Equal(0, _run.RunWith(history, "restore", "again", "-").Code);
        Assert.Equal(history, _run.Run("history", "again.trimout").Output);
        Directory.CreateDirectory(_run.In("sample"));
        File.WriteAllText(_run.In("sample/history.jsonl"), history);
        Assert.Equal(history, _run.Run("history", "sample").Output);
    }

    [Fact]
    public void ASampleFolderIsLookedAtAndNotChanged()
    {
        Begin();
        Directory.CreateDirectory(_run.In("sample"));
        File.WriteAllText(_run.In("sample/history.jsonl"), _run.Run("history", "elm.trimout").Output);
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW1,30\n");
        var refused = _run.Run("import", "sample", "s.csv");
        Assert.Equal(64, refused.Code);
        Assert.Contains("trimout restore", refused.Error);
        Assert.Single(Directory.GetFiles(_run.In("sample")));
    }

    [Fact]
    public void CheckSaysByItsExitCodeWhetherThereAreOpenStops()
    {
        Begin();
        Assert.Equal(0, _run.Run("check", "elm.trimout").Code);
        File.WriteAllText(_run.In("sample.jsonl"), _run.Run("history", "elm.trimout").Output + WrongLeadSide);
        Assert.Equal(0, _run.Run("restore", "wrong", "sample.jsonl").Code);
        var found = _run.Run("check", "wrong.trimout");
        Assert.Equal(1, found.Code);
        Assert.Contains("stop    W01: ", found.Output);
        using var json = JsonDocument.Parse(_run.Run("check", "wrong.trimout", "--json").Output);
        Assert.True(json.RootElement.GetProperty("openStops").GetInt32() > 0);
        Assert.Contains(json.RootElement.GetProperty("findings").EnumerateArray(), f => f.GetProperty("check").GetString() == "lead-away-from-motor");
    }

    [Fact]
    public void TheBinderIsWrittenWhereItIsAskedFor()
    {
        Begin();
        var ended = _run.Run("binder", "elm.trimout", "--out", "papers", "--date", "2026-03-14");
        Assert.Equal(0, ended.Code);
        Assert.Equal(["elm-binder.html", "elm-binder.md"], Directory.GetFiles(_run.In("papers")).Select(f => Path.GetFileName(f)).Order());
        Assert.Contains("Elm Street 12", File.ReadAllText(_run.In("papers/elm-binder.md")));
        Assert.Equal(64, _run.Run("binder", "elm.trimout", "--date", "14.3.2026").Code);
    }

    [Theory]
    [InlineData(66, "There is no house file", "check", "nothing.trimout")]
    [InlineData(65, "is no house file", "check", "list.txt")]
    [InlineData(64, "'frobnicate'", "frobnicate")]
    [InlineData(64, "Required", "import", "elm.trimout")]
    [InlineData(64, "There is no command frobnicate", "help", "frobnicate")]
    [InlineData(66, "There is no file nothing.csv", "import", "elm.trimout", "nothing.csv")]
    [InlineData(66, "nothing.jsonl can't be read", "restore", "x", "nothing.jsonl")]
    [InlineData(65, "list.txt: Line 1: The line is no change", "restore", "x", "list.txt")]
    public void ErrorsGoToStandardErrorWithTheirCode(int code, string said, params string[] arguments)
    {
        Begin();
        File.WriteAllText(_run.In("list.txt"), "milk, eggs");
        var ended = _run.Run(arguments);
        Assert.Equal(code, ended.Code);
        Assert.Contains(said, ended.Error);
        Assert.Empty(ended.Output);
        Assert.Equal("milk, eggs", File.ReadAllText(_run.In("list.txt")));
        Assert.False(File.Exists(_run.In("x.trimout")));
    }

    [Fact]
    public void HelpExplainsEveryCommandAndEveryExitCode()
    {
        var help = _run.Run("help");
        Assert.Equal(0, help.Code);
        foreach (var verb in CommandLine.Build().Subcommands)
        {
            Assert.Contains($"  {verb.Name} ", help.Output);
            Assert.Equal(0, _run.Run("help", verb.Name).Code);
        }
        foreach (var (code, meaning) in ExitCode.All)
            Assert.Contains($"{code,2}  {meaning}", help.Output);
    }

    private const string WrongLeadSide =
        """{"v":1,"id":"b:1","stamp":2,"at":"2026-03-02T08:00:00+00:00","by":"Ada","what":"x","edits":[""" +
        """{"add":"k","kind":"covering-kind","under":"house"},{"put":"k","field":"name","value":"Blind"},{"put":"k","field":"motor-end","value":"left"},""" +
        """{"add":"w","kind":"window","under":"house"},{"put":"w","field":"tag","value":"W01"},""" +
        """{"add":"u","kind":"unit","under":"w"},{"put":"u","field":"kind","value":"k"},{"put":"u","field":"lead-side","value":"right"}]}""" + "\n";
}

using System.Text;

namespace TrimOut.Tests.Verbs;

/// <summary>A house that a killed program left, and whose journal then lost what was called saved: every verb says so, and goes on only when it is told
/// to.</summary>
public sealed class DamagedHouseTests : IDisposable
{
    private const int Saves = 5;

    private readonly RunTrimOut _run = new();

    public DamagedHouseTests()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW01,30\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
        using var process = _run.Start("set", "elm.trimout");
        for (var save = 1; save <= Saves; save++)
        {
            process.StandardInput.WriteLine($"W01\tnote\tnote {save}");
            process.StandardInput.Flush();
            Assert.Equal($"{save}", process.StandardOutput.ReadLine());
        }
        process.Kill();
        process.WaitForExit();
    }

    public void Dispose() => _run.Dispose();

    private string Journal => _run.In("elm.trimout.journal");

    /// <summary>Cuts the last saves off the journal in the middle of a line, as a copy that was not finished leaves it.</summary>
    private void CutAway(int saves)
    {
        var bytes = File.ReadAllBytes(Journal);
        File.WriteAllBytes(Journal, bytes[..(bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes($"note {Saves - saves + 1}")) + 3)]);
    }

    [Fact]
    public void AHouseThatAKilledProgramLeftIsWholeForWhoeverLooks()
    {
        var looked = _run.Run("history", "elm.trimout");
        Assert.Equal((0, ""), (looked.Code, looked.Error));
        Assert.Equal(2 + Saves, looked.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Theory]
    [InlineData("history elm.trimout")]
    [InlineData("check elm.trimout")]
    [InlineData("windows elm.trimout")]
    [InlineData("parts elm.trimout")]
    [InlineData("conflicts elm.trimout")]
    [InlineData("binder elm.trimout")]
    [InlineData("papers elm.trimout")]
    [InlineData("backup elm.trimout")]
    [InlineData("backup elm.trimout --to copy")]
    [InlineData("restore made elm.trimout")]
    [InlineData("compare elm.trimout elm.trimout")]
    [InlineData("set elm.trimout")]
    public void EveryVerbSaysThatSavesAreInDoubtAndEnds(string command)
    {
        CutAway(3);
        var ended = _run.Run(command.Split(' '));
        Assert.Equal(65, ended.Code);
        Assert.Contains("At least 3 saves are in doubt.", ended.Error);
        Assert.DoesNotContain("middle of a save", ended.Error);
        Assert.Empty(ended.Output);
        Assert.False(File.Exists(_run.In("copy.trimout")) || File.Exists(_run.In("made.trimout")));
    }

    [Fact]
    public void ToldToGoOnAVerbShowsWhatIsSoundAndEndsWith2()
    {
        CutAway(3);
        Assert.Contains("--go-on", _run.Run("history", "elm.trimout").Error);
        var went = _run.Run("history", "elm.trimout", "--go-on");
        Assert.Equal(2, went.Code);
        Assert.Contains("At least 3 saves are in doubt.", went.Error);
        Assert.Equal(2 + Saves - 3, went.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Equal(2, _run.Run("backup", "elm.trimout", "--to", "copy", "--go-on").Code);
        Assert.Equal(went.Output, _run.Run("history", "copy.trimout").Output);
    }

    [Theory]
    [InlineData("check elm.trimout")]
    [InlineData("windows elm.trimout")]
    [InlineData("parts elm.trimout")]
    [InlineData("kit elm.trimout")]
    [InlineData("kit-out elm.trimout --kit kept")]
    [InlineData("conflicts elm.trimout")]
    [InlineData("binder elm.trimout")]
    [InlineData("paper elm.trimout labels")]
    [InlineData("papers elm.trimout")]
    [InlineData("restore made elm.trimout")]
    [InlineData("compare elm.trimout elm.trimout")]
    public void WhateverIsWrittenWithSavesMissingEndsWith2AndSaysIt(string command)
    {
        CutAway(3);
        var went = _run.Run([.. command.Split(' '), "--go-on"]);
        Assert.Equal(2, went.Code);
        Assert.Contains("At least 3 saves are in doubt.", went.Error);
    }

    [Fact]
    public void ARescueListsWhatTheJournalLost()
    {
        CutAway(3);
        var rescue = _run.Run("rescue", "elm.trimout", "saved");
        Assert.Equal(2, rescue.Code);
        Assert.Contains("Changes 5 to 7, after", rescue.Error);
        Assert.Equal(4, _run.Run("history", "saved.trimout").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void TwoReplacementsWithinOneSecondKeepWhatBothReplaced()
    {
        Assert.Equal(0, _run.Run("restore", "early", _run.Run("backups", "elm.trimout").Output.Split('\t')[0]).Code);
        var before = _run.Run("history", "elm.trimout").Output;
        var replaced = Enumerable.Range(0, 2).Select(_ => _run.Run("restore", "elm.trimout", "early.trimout", "--replace")).ToList();
        Assert.All(replaced, r => Assert.Equal(0, r.Code));
        Assert.Contains(_run.Run("backups", "elm.trimout").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries), line => _run.Run("history",
            line.Split('\t')[0]).Output == before);
    }
}

namespace TrimOut.Tests.Verbs;

public sealed class StepMarksTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    private void Begin()
    {
        Assert.Equal(0, _run.Run("new", "elm", "--name", "Elm Street 12", "--by", "Ada").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,room\nW01,Kitchen\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
    }

    [Fact]
    public void AStepIsMarkedByALineAndOneOutOfOrderNeedsItsReason()
    {
        Begin();
        var lines = "W01\tstep:route-chosen\tnot needed: there was a cable\nW01\tstep:cable-found\tdone\n"
            + "W01\tstep:cable-found\tdone although: the builder pulled it\n";
        var set = _run.RunWith(lines, "set", "elm.trimout");
        Assert.Equal("1\n3\n", set.Output);
        Assert.Contains("Line 2: W01, Cable found again: \"Cable pulled, tails left\" (Rough-in) is not done yet.", set.Error);
        Assert.Contains("done although: ", set.Error);
        Assert.Contains("Reason: the builder pulled it", _run.Run("history", "elm.trimout").Output);
    }

    /// <summary>No step after power is marked before volts are read without a reason, here as on the screens.</summary>
    [Theory]
    [InlineData("shown", "Moved from every remote")]
    [InlineData("remotes-paired", "Volts and polarity read")]
    [InlineData("level-with-neighbours", "Open limit set and seen")]
    public void AStepAfterPowerWaitsForVolts(string step, string before)
    {
        Begin();
        var set = _run.RunWith($"W01\tstep:{step}\tdone\n", "set", "elm.trimout");
        Assert.Empty(set.Output);
        Assert.True(set.Error.Contains($"\"{before}\" ", StringComparison.Ordinal) || set.Error.Contains("still missing ", StringComparison.Ordinal),
            set.Error);
    }

    [Fact]
    public void AStepWithoutItsEvidenceIsNotMarked()
    {
        Begin();
        var set = _run.RunWith("W01\tstep:box-matched\tdone\nW01\tstep:nonsense\tdone\nW01\tstep:moves-free\tperhaps\n", "set", "elm.trimout");
        Assert.Empty(set.Output);
        Assert.Contains("Line 1: W01, Box matched: still missing ", set.Error);
        Assert.Contains(" has no step nonsense. It has: ", set.Error);
        Assert.Contains("Line 3: A step is done, done although: and then why", set.Error);
    }
}

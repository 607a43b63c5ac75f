namespace TrimOut.Tests.Verbs;

public sealed class WhatIfVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    // 1 mm2 solid at 20 C has 0.0181 ohm per metre (IEC 60228): 1.81 ohm over 50 m out and back.
    [Fact]
    public void WhatArrivesIsWorkedOut()
    {
        var ended = _run.Run("what-if", "50 m", "1 mm2", "1", "--solid", "--warmest", "20", "--least", "10");
        Assert.Equal(0, ended.Code);
        Assert.StartsWith("10.190 V arrive of 12 V: 15.1 % are lost over 1.810 ohm out and back.\nEnough: 0.190 V to spare of 10 V.", ended.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TooLittleIsSaidByTheExitCode()
    {
        var ended = _run.Run("what-if", "400 ft", "20 AWG", "1");
        Assert.Equal(1, ended.Code);
        Assert.Contains("That is too little", ended.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0 ft", "16", "1", "Length: ")]
    [InlineData("-5 ft", "16", "1", "can't be negative")]
    [InlineData("50 ft", "99", "1", "is no conductor size")]
    [InlineData("50 ft", "16", "NaN", "is no number of amperes")]
    [InlineData("50 ft", "16", "0", "Current: ")]
    public void AFigureThatMakesNoSenseIsNamed(string length, string conductor, string current, string said)
    {
        var ended = _run.Run("what-if", "--", length, conductor, current);
        Assert.Equal(64, ended.Code);
        Assert.Contains(said, ended.Error, StringComparison.Ordinal);
        Assert.Empty(ended.Output);
    }
}

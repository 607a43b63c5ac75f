namespace TrimOut.Tests.Verbs;

public sealed class WhatIfVerbTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public void Dispose() => _run.Dispose();

    // 1 mm2 solid at 20 C has 0.0181 ohm per metre (IEC 60228): 1.81 ohm over 50 m out and back.
    [Fact]
    public void WhatArrivesIsWorkedOut()
    {
        var ended = _run.Run("what-if", "50 m", "1 mm2", "1", "--solid", "--warmest", "20", "--supply", "12", "--least", "10");
        Assert.Equal(0, ended.Code);
        Assert.StartsWith("10.190 V arrive of 12 V: 15.1 % are lost over 1.810 ohm out and back.\nEnough: 0.190 V to spare of 10 V.", ended.Output,
            StringComparison.Ordinal);
    }

    [Fact]
    public void TooLittleIsSaidByTheExitCode()
    {
        var ended = _run.Run("what-if", "400 ft", "20 AWG", "1", "--supply", "12", "--least", "10.2");
        Assert.Equal(1, ended.Code);
        Assert.Contains("That is too little", ended.Output, StringComparison.Ordinal);
    }

    // The kit of the trade ends 20 AWG at 75 ft (common practice, no published source): 76 ft are a foot too long, whatever arrives.
    [Fact]
    public void TheMakersTableGovernsWhereItIsTighter()
    {
        var ended = _run.Run("what-if", "76 ft", "20 AWG", "0.5", "--supply", "12", "--least", "10.2", "--table", "75 ft");
        Assert.Equal(1, ended.Code);
        Assert.Contains("The maker's table ends at 75.0 ft (22.86 m): the table governs, with 1.0 ft (0.30 m) too much.", ended.Output,
            StringComparison.Ordinal);
    }

    // 12 V, 1 mm2 solid at 20 C: 20 m with 2 A and 10 m with 1 A lose 1.448 and 0.362 V.
    [Fact]
    public void SeveralUnitsOnOneCableAreRefusedUnlessTheSheetAllowsThem()
    {
        string[] asked = ["what-if", "20 m", "1 mm2", "1", "--solid", "--warmest", "20", "--supply", "12", "--least", "10", "--units", "2", "--apart", "10 m"];
        var refused = _run.Run(asked);
        Assert.Equal(1, refused.Code);
        Assert.StartsWith("10.190 V arrive of 12 V at the last unit", refused.Output, StringComparison.Ordinal);
        Assert.Contains("Unit 1, 65.6 ft (20.00 m) from the panel: 2 A through its stretch, 10.552 V arrive.", refused.Output, StringComparison.Ordinal);
        Assert.Contains("Refused, whatever arrives: the maker's sheet must allow 2 units on an output, and 1 is said to be allowed.", refused.Output,
            StringComparison.Ordinal);
        Assert.Equal(0, _run.Run([.. asked, "--sheet-allows", "2"]).Code);
    }

    [Theory]
    [InlineData("--least", "Read the supply volts off the sheet of the panel")]
    [InlineData("--supply", "Read the minimum volts off the sheet of the unit")]
    public void VoltsThatOnlyASheetSaysAreAskedFor(string given, string said)
    {
        var ended = _run.Run("what-if", "50 ft", "16 AWG", "1", given, "11");
        Assert.Equal(64, ended.Code);
        Assert.Contains(said, ended.Error, StringComparison.Ordinal);
        Assert.Empty(ended.Output);
    }

    [Theory]
    [InlineData("--units", "0", "Units: ")]
    [InlineData("--units", "1.5", "is no whole number of units")]
    [InlineData("--apart", "x", "is no length")]
    [InlineData("--table", "-1 ft", "can't be negative")]
    public void AnOptionThatMakesNoSenseIsNamed(string option, string value, string said)
    {
        var ended = _run.Run("what-if", "50 ft", "16", "1", "--supply", "12", "--least", "10.2", $"{option}={value}");
        Assert.Equal(64, ended.Code);
        Assert.Contains(said, ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void ThePartsOfASampleJobAreListed()
    {
        var ended = _run.Run("parts", Path.Combine(TrimOut.Testing.Repository.Root, "sample-jobs", "ridge-house"));
        Assert.Equal(0, ended.Code);
        Assert.Contains("supplies\tMore: Panel, 8 outputs\t1\t\t18 units on panels; the panels of the house have room for 13; 8 to a panel\t"
            + "power\t2026-07-02\t\t\t\t1\n", ended.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0 ft", "16", "1", "Length: ")]
    [InlineData("-5 ft", "16", "1", "can't be negative")]
    [InlineData("50 ft", "99", "1", "is no conductor size")]
    [InlineData("50 ft", "16", "NaN", "is no number of amperes")]
    [InlineData("50 ft", "16", "0", "Current: ")]
    public void AFigureThatMakesNoSenseIsNamed(string length, string conductor, string current, string said)
    {
        var ended = _run.Run("what-if", "--supply", "12", "--least", "10.2", "--", length, conductor, current);
        Assert.Equal(64, ended.Code);
        Assert.Contains(said, ended.Error, StringComparison.Ordinal);
        Assert.Empty(ended.Output);
    }
}

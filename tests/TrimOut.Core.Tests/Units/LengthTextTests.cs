using CsCheck;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class LengthTextTests
{
    // 62 ft is 18.8976 m: a cable that may be so long is not 18.9 m, and one that must be is not 18.8 m.
    [Fact]
    public void ALimitIsReadRoundedDownAndANeedRoundedUp()
    {
        var (length, metric, run) = (Length.FromFeet(62), DisplayUnits.Millimetres, LengthScale.Run);
        Assert.Equal(("18.8 m", "18.9 m"), (length.ShowAtMost(metric, run), length.ShowAtLeast(metric, run)));
        Assert.Equal(("62 ft", "62 ft"), (length.ShowAtMost(DisplayUnits.Inches, run), length.ShowAtLeast(DisplayUnits.Inches, run)));
        Assert.Equal(("1 mm", "2 mm"), (Length.FromMillimetres(1.7m).ShowAtMost(metric), Length.FromMillimetres(1.2m).ShowAtLeast(metric)));
    }

    // Notations of drawings and tapes: from memory of drafting convention. 1 in = 25.4 mm exactly (1959).
    [Theory]
    [InlineData("45 1/2", 1155.7)]
    [InlineData("45-1/2", 1155.7)]
    [InlineData("45.5", 1155.7)]
    [InlineData("3'-4 1/2\"", 1028.7)]
    [InlineData("3' 4-1/2\"", 1028.7)]
    [InlineData("3' 9 1/2\"", 1155.7)]
    [InlineData("3'-0\"", 914.4)]
    [InlineData("3'", 914.4)]
    [InlineData("1/2\"", 12.7)]
    [InlineData("15/16", 23.8125)]
    [InlineData("11/16\"", 17.4625)]
    [InlineData("4 15/16", 125.4125)]
    [InlineData("45½", 1155.7)]
    [InlineData("½", 12.7)]
    [InlineData("3′ 4½″", 1028.7)]
    [InlineData("3’ 4 1⁄2”", 1028.7)]
    [InlineData("1156 mm", 1156)]
    [InlineData("115.6 cm", 1156)]
    [InlineData("1.156m", 1156)]
    [InlineData("62 ft", 18897.6)]
    [InlineData("8 1/2 ft", 2590.8)]
    [InlineData("8-1/2'", 2590.8)]
    [InlineData("8½ feet", 2590.8)]
    [InlineData("8.5'", 2590.8)]
    [InlineData("1/4 ft", 76.2)]
    [InlineData("1/16", 1.5875)]
    [InlineData("1/8", 3.175)]
    [InlineData("45", 1143)]
    [InlineData(".5", 12.7)]
    [InlineData("  45 1/2 IN ", 1155.7)]
    public void ReadsWhatPeopleWrite(string typed, double millimetres) =>
        Assert.Equal((decimal)millimetres, LengthText.Read(typed, DisplayUnits.Inches).Value.Millimetres);

    [Theory]
    [InlineData("45-1", "may be a range or a fraction")]
    [InlineData("3'-13\"", "inches go from 0 to 11")]
    [InlineData("1/0", "is no fraction")]
    [InlineData("45 1/3", "is on no tape")]
    [InlineData("8 1/3 ft", "is on no tape")]
    [InlineData("8 4/2 ft", "a whole foot or more")]
    [InlineData("45 9/8", "a whole inch or more")]
    [InlineData("45.5 1/2", "either as a decimal or as a fraction")]
    [InlineData("-45", "can't be negative")]
    [InlineData("−45", "can't be negative")]
    [InlineData("1,156", "decimals with a point")]
    [InlineData("2'000", "can be read two ways")]
    [InlineData("2’000", "can be read two ways")]
    [InlineData("1'200.5 mm", "can be read two ways")]
    [InlineData("", "Nothing was typed")]
    [InlineData("wide", "is no length")]
    [InlineData("45 45", "is no length")]
    [InlineData("1e9", "is no length")]
    [InlineData("99999999", "too large")]
    [InlineData("99999999999999999999999999999999", "too large")]
    [InlineData("12345678901234567890123456789012345678901", "too long")]
    public void RefusesWhatCanBeReadTwoWaysOrNotAtAll(string typed, string because) =>
        Assert.Contains(because, LengthText.Read(typed, DisplayUnits.Inches).Reason!, StringComparison.Ordinal);

    [Fact]
    public void ABareNumberIsInTheHousesOwnUnit()
    {
        Assert.Equal(45m, LengthText.Read("45", DisplayUnits.Millimetres).Value.Millimetres);
        Assert.Equal(45m, LengthText.Read("45", DisplayUnits.Inches).Value.Inches);
        Assert.Equal(45m, LengthText.Read("45", DisplayUnits.Inches, LengthScale.Run).Value.Feet);
        Assert.Equal(45m, LengthText.Read("45", DisplayUnits.Millimetres, LengthScale.Run).Value.Metres);
    }

    [Theory]
    [InlineData(DisplayUnits.Millimetres, LengthScale.Opening)]
    [InlineData(DisplayUnits.Inches, LengthScale.Run)]
    public void AFractionWithoutAUnitIsAskedAboutWhereItIsNoInch(DisplayUnits units, LengthScale scale) =>
        Assert.Contains("has a fraction and no unit", LengthText.Read("45 1/2", units, scale).Reason!, StringComparison.Ordinal);

    [Theory]
    [InlineData("36", "36\"")]
    [InlineData("45 8/16", "45 1/2\"")]
    [InlineData("1/2", "1/2\"")]
    [InlineData("0", "0\"")]
    [InlineData("1156 mm", "1156 mm")]
    [InlineData("0.3", "0.3\"")]
    [InlineData("0.285", "0.285\"")]
    [InlineData("36.3", "36.3\"")]
    [InlineData("0.2854", "7.24916 mm")]
    [InlineData("7 mm", "7 mm")]
    public void PrintsInches(string typed, string printed) =>
        Assert.Equal(printed, LengthText.Read(typed, DisplayUnits.Inches).Value.Show(DisplayUnits.Inches));

    [Theory]
    [InlineData("3'", "3'-0\"")]
    [InlineData("36 1/2\"", "3'-0 1/2\"")]
    [InlineData("11 31/32\"", "0'-11 31/32\"")]
    [InlineData("62 ft", "62'-0\"")]
    public void PrintsFeetAndInches(string typed, string printed) =>
        Assert.Equal(printed, LengthText.Read(typed, DisplayUnits.Inches).Value.Show(DisplayUnits.Inches, LengthScale.Run));

    // 129 ft are 39.3192 m: a run that was typed in the other units is said in those of the house.
    [Theory]
    [InlineData("39.5 m", DisplayUnits.Inches, "129'-7 1/8\"")]
    [InlineData("39500 mm", DisplayUnits.Millimetres, "39.5 m")]
    [InlineData("73832.67 mm", DisplayUnits.Millimetres, "73.833 m")]
    [InlineData("73832.67 mm", DisplayUnits.Inches, "242'-2 13/16\"")]
    [InlineData("62 ft", DisplayUnits.Inches, "62'-0\"")]
    public void ARunIsSaidInTheUnitsOfTheHouse(string typed, DisplayUnits units, string said) =>
        Assert.Equal(said, LengthText.Read(typed, units).Value.ShowRun(units));

    // 11 31/32 in carries to 1'-0" when it is rounded to sixteenths.
    [Fact]
    public void RoundingCarriesIntoTheFoot() =>
        Assert.Equal("1'-0\"", Length.FromInches(11, 31, 32).RoundNearest(Length.FromInches(0, 1, 16)).Show(DisplayUnits.Inches, LengthScale.Run));

    [Theory]
    [InlineData(DisplayUnits.Inches, LengthScale.Opening)]
    [InlineData(DisplayUnits.Inches, LengthScale.Run)]
    [InlineData(DisplayUnits.Millimetres, LengthScale.Opening)]
    [InlineData(DisplayUnits.Millimetres, LengthScale.Run)]
    public void WhatIsPrintedReadsBackTheSameForEverySixtyFourthUpToFourHundredInches(DisplayUnits units, LengthScale scale)
    {
        for (var k = 0; k <= 400 * 64; k++)
        {
            var length = Length.FromInches(0, k, 64);
            Assert.Equal(length, LengthText.Read(length.Show(units, scale), units, scale).Value);
        }
    }

    [Fact]
    public void WhatIsPrintedReadsBackTheSameForAnyLengthToTheNanometre() =>
        Gen.Select(Gen.Long[0, 30_000_000_000], Gen.Enum<DisplayUnits>(), Gen.Enum<LengthScale>()).Sample((nanometres, units, scale) =>
            LengthText.Read(Length.FromNanometres(nanometres).Show(units, scale), units, scale).Value.Nanometres == nanometres);

    [Fact]
    public void EveryWayToWriteAFractionReadsTheSame() =>
        Gen.Select(Gen.Int[1, 400], Gen.Int[1, 63]).Sample((whole, part) =>
        {
            var length = Length.FromInches(whole, part, 64);
            string[] ways =
            [
                $"{whole} {part}/64", $"{whole}-{part}/64", $"{whole} {part}/64\"", $"{whole / 12}' {whole % 12} {part}/64\"",
                $"{whole / 12}'-{whole % 12} {part}/64", $"{whole / 12} ft {whole % 12}-{part}/64 in",
            ];
            foreach (var typed in ways)
                Assert.Equal(length, LengthText.Read(typed, DisplayUnits.Inches).Value);
        });

    [Fact]
    public void NothingThatIsTypedMakesItThrow() =>
        Gen.String[Gen.Char["0123456789 /-'\".,mcftin½′"], 0, 16].Sample(typed => _ = LengthText.Read(typed, DisplayUnits.Inches));
}

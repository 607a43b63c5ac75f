using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>A figure and its limit are told with so many digits that they differ, where they do.</summary>
public class DigitsTests
{
    private static readonly Message Both = new("{0} and {1}");

    [Theory]
    [InlineData("11.2", "11.5", "11.20 V and 11.50 V")]
    [InlineData("11.501", "11.504", "11.501 V and 11.504 V")]
    [InlineData("11.50001", "11.50002", "11.50001 V and 11.50002 V")]
    [InlineData("11.5", "11.5", "11.50 V and 11.50 V")]
    [InlineData("11.5001", "11.5001", "11.50 V and 11.50 V")]
    [InlineData("11.123456789", "11.123456788", "11.123456789 V and 11.123456788 V")]
    [InlineData("11.12345678911", "11.12345678912", "11.123456789 V and 11.123456789 V")]
    public void AsManyAsTellThemApartAndNineAtTheMost(string figure, string limit, string told)
    {
        var (one, other) = Digits.Apart(Number(figure), Number(limit), "V");
        Assert.Equal(told, Both.With(one, other).In(new TestJob().House));
    }

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    // A limit is told rounded down, so that nobody who keeps to it passes it: to a hundredth of a foot, or to a centimeter.
    [Theory]
    [InlineData(DisplayUnits.Inches, "100.239", "100.23 ft")]
    [InlineData(DisplayUnits.Inches, "100", "100 ft")]
    [InlineData(DisplayUnits.Millimetres, "100.239", "30.55 m")]
    public void ALimitIsToldRoundedDown(DisplayUnits units, string feet, string told) =>
        Assert.Equal(told, Length.FromFeet(Number(feet)).LimitIn(new JobItself(new TestJob(units).House)));

    [Theory]
    [InlineData(DisplayUnits.Inches, "1.235 in")]
    [InlineData(DisplayUnits.Millimetres, "31.36 mm")]
    public void AFigureThatNoTapeShowsIsToldByItsNumber(DisplayUnits units, string told) =>
        Assert.Equal(told, Length.FromInches(1.2346m).About(new JobItself(new TestJob(units).House)));
}

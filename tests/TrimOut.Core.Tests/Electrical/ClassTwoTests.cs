using TrimOut.Core.Electrical;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class ClassTwoTests
{
    // NFPA 70-2017 chapter 9 table 11(B), inherently limited direct current, at the edges of its bands.
    [Theory]
    [InlineData(12, 8, 60, 5)]
    [InlineData(20, 8, 100, 5)]
    [InlineData(20.01, 8, 100, 4.9975)]
    [InlineData(24, 8, 100, 4.1667)]
    [InlineData(30, 8, 100, 3.3333)]
    [InlineData(30.01, 4.9983, 100, 3.3322)]
    [InlineData(48, 3.125, 100, 2.0833)]
    [InlineData(60, 2.5, 100, 1.6667)]
    public void TheLimitsAreThoseOfTheTable(double volts, double most, double power, double current)
    {
        var limits = ClassTwo.Of(new Voltage((decimal)volts)).Value;
        Assert.Equal((decimal)most, Math.Round(limits.MostCurrent.Amperes, 4));
        Assert.Equal((decimal)power, limits.NameplatePower.Watts);
        Assert.Equal((decimal)current, Math.Round(limits.NameplateCurrent.Amperes, 4));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-12)]
    [InlineData(60.01)]
    public void AnotherSupplyIsRefusedByName(double volts) =>
        Assert.StartsWith("Supply: ", ClassTwo.Of(new Voltage((decimal)volts)).Reason, StringComparison.Ordinal);
}

using TrimOut.Core.Electrical;

namespace TrimOut.Core.Tests.Electrical;

public class HandMeterTests
{
    // Common practice, no published source: 0.5 % and two steps. Of 12.00 V that is 0.06 and 0.02 V, whichever way round the probes are.
    [Theory]
    [InlineData(12, 0.08)]
    [InlineData(-12, 0.08)]
    [InlineData(0, 0.02)]
    public void AReadingOfVoltsMayBeOffByItsShareAndTwoHundredths(double volts, double off) =>
        Assert.Equal((decimal)off, HandMeter.OfVolts((decimal)volts));

    [Fact]
    public void AStepTenTimesAsCoarseAddsTenTimesAsMuch() => Assert.Equal(0.205m, HandMeter.Error(1, 0.1m));
}

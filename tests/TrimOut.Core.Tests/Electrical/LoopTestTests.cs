using TrimOut.Core.Electrical;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class LoopTestTests
{
    // 18 AWG solid, 100 ft, far end shorted: 1.2770 ohm at 20 C and 1.0393 times as much at 30 C (worked out by hand); leads of 0.2 ohm.
    [Fact]
    public void LeadsAndWarmthAreTakenOff()
    {
        var test = new LoopTest(new Resistance(1.2770m * 1.0393m + 0.2m), new Resistance(0.2m), new Temperature(30));
        Assert.Equal(1.3272m, Math.Round(test.OfCable.Ohms, 4));
        Assert.Equal(1.2770m, Math.Round(test.At20.Ohms, 4));
    }

    [Fact]
    public void LeadsAddToWhatTheMeterMustShow() =>
        Assert.Equal(new Resistance(2.01m), new LoopTest(default, new Resistance(0.2m), null).Expected(Length.FromMetres(50), 0.0181m));

    [Fact]
    public void WithoutAWordItIsTwentyDegreesAndNoLeads()
    {
        var test = new LoopTest(new Resistance(1), null, null);
        Assert.Equal(new Resistance(1), test.At20);
        Assert.Equal("cable taken as 20 C, leads taken off", test.Circumstances.In(House.Empty));
    }

    [Fact]
    public void OpenStaysOpen() => Assert.Equal(LoopReading.Open, new LoopTest(LoopReading.Open, new Resistance(0.2m), new Temperature(50)).At20);

    [Fact]
    public void LessThanTheLeadsIsNothingAndNotNegative() => Assert.Equal(default, new LoopTest(new Resistance(0.1m), new Resistance(0.2m), null).OfCable);
}

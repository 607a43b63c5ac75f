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

    [Theory]
    [InlineData(null, null, "cable taken as 20 C, leads taken off")]
    [InlineData(null, 0.2, "cable taken as 20 C, leads 0.2 ohm")]
    [InlineData(35, null, "cable at 35 C, leads taken off")]
    [InlineData(35, 0.2, "cable at 35 C, leads 0.2 ohm")]
    public void WhatIsKnownOfATestIsSaid(int? celsius, double? leads, string words) => Assert.Equal(words,
        new LoopTest(new Resistance(1), leads is { } add ? new Resistance((decimal)add) : null, celsius is { } warm ? new Temperature(warm) : null)
            .Circumstances.In(House.Empty));

    [Fact]
    public void OpenStaysOpen()
    {
        var test = new LoopTest(LoopReading.Open, new Resistance(1), new Temperature(50));
        Assert.Equal(LoopReading.Open, test.At20);
        Assert.Equal(LoopReading.Open, test.OfCable);
        Assert.False(test.ShowsNoCable);
    }

    [Fact]
    public void WithoutLeadsTheMeterShowsTheCableAlone() =>
        Assert.Equal(new Resistance(1.81m), new LoopTest(default, null, null).Expected(Length.FromMetres(50), 0.0181m));

    [Fact]
    public void AReadingOfTheLeadsAloneShowsNoCable()
    {
        Assert.True(new LoopTest(new Resistance(0.2m), new Resistance(0.2m), null).ShowsNoCable);
        Assert.False(new LoopTest(new Resistance(0.21m), new Resistance(0.2m), null).ShowsNoCable);
    }

    // 1 ohm is expected: a tenth and the contacts are 0.2 ohm, and the wider of that and the band of the meter is given.
    [Theory]
    [InlineData(0.8, 0.1, false)]
    [InlineData(0.7999, 0.1, true)]
    [InlineData(0.7, 0.3, false)]
    [InlineData(0.6999, 0.3, true)]
    public void ShortedIsBelowTheWiderOfBothBands(double read, double band, bool shorted) => Assert.Equal(shorted,
        new LoopTest(new Resistance((decimal)read), null, null).IsOpenOrShorted(new Resistance(1), new Resistance((decimal)band)));

    [Fact]
    public void OpenIsOpenWhateverTheBand() =>
        Assert.True(new LoopTest(LoopReading.Open, null, null).IsOpenOrShorted(new Resistance(1), new Resistance(1)));

    [Fact]
    public void LessThanTheLeadsIsNothingAndNotNegative() => Assert.Equal(default, new LoopTest(new Resistance(0.1m), new Resistance(0.2m), null).OfCable);
}

using CsCheck;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class TwoWireTests
{
    // A published exam answer (electrician2.com): two wires of 100 ft, 16 AWG stranded at 4.99 ohm per 1000 ft, 4 A, 24 V: 3.992 V, 16.63 %.
    [Fact]
    public void APublishedWorkedExampleOfTwoWiresIsMet()
    {
        var drop = TwoWire.Drop(Length.FromFeet(100), 4.99m / 304.8m, new Current(4));
        Assert.Equal(3.992m, Math.Round(drop.Volts, 6));
        Assert.Equal(16.63m, Math.Round(drop.Volts / 24 * 100, 2));
    }

    // FAA AC 43.13-1B, tables 11-7 and 11-8: there "run length" is the length of the conductor, used once; here it is one way, used twice.
    [Theory]
    [InlineData(107, 0.00044, 0.942)]
    [InlineData(90, 0.00028, 0.504)]
    [InlineData(100, 0.00306, 6.12)]
    [InlineData(39, 0.00126, 0.98)]
    [InlineData(156, 0.00126, 3.93)]
    [InlineData(273, 0.00126, 6.88)]
    public void TheAircraftHandbooksRowsAreMetWithHalfTheirLengthOneWay(double conductorFeet, double ohmsPerFoot, double volts)
    {
        var drop = TwoWire.Drop(Length.FromFeet((decimal)conductorFeet / 2), (decimal)ohmsPerFoot / 0.3048m, new Current(20)).Volts;
        Assert.InRange((double)drop, volts - 0.005, volts + 0.005);
    }

    // 18 AWG solid, far end shorted: 30 m 1.2569 ohm, 100 ft 1.2770 ohm at 20 C, 1.0393 times as much at 30 C (worked out by hand).
    [Fact]
    public void ALoopReadsOutAndBack()
    {
        var ohms = Conductors.OhmsPerMetre(new ConductorSize.Gauge(18), Stranding.Solid, new Temperature(20)).Value;
        Assert.Equal(1.2569m, Math.Round(TwoWire.Loop(Length.FromMetres(30), ohms).Ohms, 4));
        Assert.Equal(1.2770m, Math.Round(TwoWire.Loop(Length.FromFeet(100), ohms).Ohms, 4));
        var warm = Conductors.OhmsPerMetre(new ConductorSize.Gauge(18), Stranding.Solid, new Temperature(30)).Value;
        Assert.Equal(1.0393m, Math.Round(warm / ohms, 4));
    }

    // The trade's 200, 120 and 75 ft (common practice, no published source) are one loop budget: 1.606, 1.532 and 1.523 ohm at 20 C, solid.
    [Theory]
    [InlineData(16, 200, 1.606)]
    [InlineData(18, 120, 1.532)]
    [InlineData(20, 75, 1.523)]
    public void TheTradesTableIsOneLoopBudget(int gauge, double feet, double ohms) =>
        Assert.Equal((decimal)ohms, Math.Round(TwoWire.Loop(Length.FromFeet((decimal)feet), Solid(gauge)).Ohms, 3));

    // With 1.606 ohm the same formula allows 126 ft of 18 AWG and 79 ft of 20 AWG.
    [Theory]
    [InlineData(18, 126)]
    [InlineData(20, 79)]
    public void ThatBudgetAllowsALittleMoreOfTheThinnerOnes(int gauge, double feet) =>
        Assert.Equal((decimal)feet, Math.Round(TwoWire.FromLoop(new Resistance(1.6063m), Solid(gauge)).Feet, 0));

    [Fact]
    public void ALongerRunNeverRaisesTheVoltage() =>
        Gen.Select(Gen.Int[0, 300_000], Gen.Int[0, 300_000], Gen.Int[1, 5000], Gen.Int[10, 24]).Sample((a, b, milliamps, gauge) =>
    {
        var (supply, amps, ohms) = (new Voltage(12), new Current(milliamps / 1000m), Solid(gauge));
        var (near, far) = (Length.FromMillimetres(Math.Min(a, b)), Length.FromMillimetres(Math.Max(a, b)));
        Assert.True(TwoWire.Arrives(supply, far, ohms, amps) <= TwoWire.Arrives(supply, near, ohms, amps));
    });

    [Fact]
    public void AtTheLongestRunJustTheLeastArrives() => Gen.Select(Gen.Int[1, 5000], Gen.Int[10, 24], Gen.Int[1, 11]).Sample((milliamps, gauge, least) =>
    {
        var (supply, amps, ohms) = (new Voltage(12), new Current(milliamps / 1000m), Solid(gauge));
        var longest = TwoWire.Longest(supply, new Voltage(least), ohms, amps);
        Assert.InRange(TwoWire.Arrives(supply, longest, ohms, amps).Volts, least - 0.000001m, least + 0.000001m);
    });

    [Fact]
    public void LengthToLoopAndBackIsTheSame() => Gen.Select(Gen.Int[1, 300_000], Gen.Int[10, 24]).Sample((millimetres, gauge) =>
    {
        var length = Length.FromMillimetres(millimetres);
        Assert.Equal(length, TwoWire.FromLoop(TwoWire.Loop(length, Solid(gauge)), Solid(gauge)));
    });

    [Fact]
    public void NoResistanceAndNoCurrentAreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoWire.Longest(new Voltage(12), new Voltage(10), 0, new Current(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoWire.Longest(new Voltage(12), new Voltage(10), 0.01m, new Current(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoWire.FromLoop(new Resistance(1), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoWire.LoopOf(new Voltage(1), new Current(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoWire.Drop(Length.FromMetres(1), 0.01m, new Current(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoWire.Loop(Length.FromMetres(-1), 0.01m));
        Assert.Throws<ArgumentOutOfRangeException>(() => TwoWire.Loop(Length.FromMetres(1), -0.01m));
    }

    [Fact]
    public void WhereTheSupplyIsTheLeastNoRunIsShortEnough()
    {
        Assert.Equal(Length.Zero, TwoWire.Longest(new Voltage(10), new Voltage(10), 0.01m, new Current(1)));
        Assert.Equal(Length.Zero, TwoWire.Longest(new Voltage(9), new Voltage(10), 0.01m, new Current(1)));
    }

    // Ohm's law: 1.8 V lost at 0.9 A are 2 ohm.
    [Fact]
    public void TheLoopIsWhatWasLostOverTheCurrent() => Assert.Equal(new Resistance(2), TwoWire.LoopOf(new Voltage(1.8m), new Current(0.9m)));

    private static decimal Solid(int gauge) => Conductors.OhmsPerMetre(new ConductorSize.Gauge(gauge), Stranding.Solid, new Temperature(20)).Value;
}

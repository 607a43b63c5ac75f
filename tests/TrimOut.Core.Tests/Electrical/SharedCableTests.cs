using CsCheck;
using TrimOut.Core.Electrical;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class SharedCableTests
{
    private static readonly Voltage Supply = new(12);

    // Worked out by hand: 10 m at 0.01 ohm per metre is 0.2 ohm out and back; 3, 2 and 1 A go through the stretches of three units of 1 A.
    [Fact]
    public void CurrentsAddOnTheWayBack()
    {
        var each = SharedCable.Of(Supply, 3, Length.FromMetres(10), Length.FromMetres(10), 0.01m, new Current(1));
        Assert.Equal([3, 2, 1], each.Select(t => t.Through.Amperes));
        Assert.Equal([11.4m, 11.0m, 10.8m], each.Select(t => t.Arrives.Volts));
        Assert.Equal([10, 20, 30], each.Select(t => t.OneWay.Metres));
    }

    [Fact]
    public void OneUnitAloneIsThePlainFormula() => Gen.Select(Gen.Int[1, 300_000], Gen.Int[1, 3000]).Sample((millimetres, milliamps) =>
        Assert.Equal(TwoWire.Arrives(Supply, Length.FromMillimetres(millimetres), 0.013m, new Current(milliamps / 1000m)),
            SharedCable.Of(Supply, 1, Length.FromMillimetres(millimetres), default, 0.013m, new Current(milliamps / 1000m))[0].Arrives));

    // The same tree as a network of nodes and conductances, its node voltages solved from Kirchhoff's current law by Gaussian elimination.
    [Fact]
    public void ANetworkSolvedByItsNodesSaysTheSame() =>
        Gen.Select(Gen.Int[0, 9999], Gen.Int[1, 60], Gen.Int[1, 2000]).Array[1, 8].Sample(units =>
        {
            var taps = units.Select((u, at) =>
                new Tap(at == 0 ? -1 : u.Item1 % (at + 1) - 1, Length.FromMetres(u.Item2), 0.0132m, new Current(u.Item3 / 1000m))).ToList();
            var expected = Nodes(taps);
            var actual = SharedCable.Of(Supply, taps);
            for (var at = 0; at < taps.Count; at++)
                Assert.Equal(expected[at], (double)actual[at].Arrives.Volts, 1e-9 * Math.Max(1, Math.Abs(expected[at])) * 1000);
        }, iter: 2_000);

    [Fact]
    public void OneMoreUnitNeverRaisesTheVoltage() => Gen.Select(Gen.Int[1, 7], Gen.Int[1, 100], Gen.Int[0, 50]).Sample((units, toFirst, apart) =>
    {
        TapResult First(int n) => SharedCable.Of(Supply, n, Length.FromMetres(toFirst), Length.FromMetres(apart), 0.0132m, new Current(0.8m))[0];
        Assert.True(First(units + 1).Arrives <= First(units).Arrives);
    });

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-2)]
    public void AUnitThatGoesOnFromItselfOrFromLaterIsRefused(int after) =>
        Assert.Throws<ArgumentException>(() => SharedCable.Of(Supply, [new Tap(after, Length.FromMetres(1), 0.01m, new Current(1))]));

    private static double[] Nodes(List<Tap> taps)
    {
        var n = taps.Count;
        var rows = new double[n, n + 1];
        for (var at = 0; at < n; at++)
        {
            var g = 1 / (double)TwoWire.Loop(taps[at].Stretch, taps[at].OhmsPerMetre).Ohms;
            rows[at, n] -= (double)taps[at].Draws.Amperes;
            rows[at, at] += g;
            if (taps[at].After < 0)
            {
                rows[at, n] += g * (double)Supply.Volts;
                continue;
            }
            rows[at, taps[at].After] -= g;
            rows[taps[at].After, at] -= g;
            rows[taps[at].After, taps[at].After] += g;
        }
        for (var pivot = 0; pivot < n; pivot++)
        {
            for (var row = 0; row < n; row++)
            {
                var factor = row == pivot ? 0 : rows[row, pivot] / rows[pivot, pivot];
                for (var column = pivot; factor != 0 && column <= n; column++)
                    rows[row, column] -= factor * rows[pivot, column];
            }
        }
        return [.. Enumerable.Range(0, n).Select(at => rows[at, n] / rows[at, at])];
    }
}

using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class WhatIfTests
{
    private static readonly Temperature At20 = new(20);

    // 50 m of 1 mm2 solid: 1.81 ohm out and back (IEC 60228), so that 1 A leaves 10.19 of 12 V.
    [Fact]
    public void TheAnswerIsWorkedOut()
    {
        var answer = Ask(12, 50, 1, 10).Value;
        Assert.Equal(new Resistance(1.81m), answer.Loop);
        Assert.Equal(new Voltage(10.19m), answer.Arrives);
        Assert.Equal(new Voltage(0.19m), answer.Margin);
        Assert.Equal(15.0833m, Math.Round(answer.LostPercent, 4));
        Assert.Equal(55.249m, Math.Round(answer.Longest.Metres, 3));
    }

    [Fact]
    public void NothingLessThanNothingArrives() => Assert.Equal(new Voltage(0), Ask(12, 900, 10, 10).Value.Arrives);

    [Theory]
    [InlineData(0, 50, 1, 10, "Supply: ")]
    [InlineData(61, 50, 1, 10, "Supply: ")]
    [InlineData(12, 0, 1, 10, "Length: ")]
    [InlineData(12, 1001, 1, 10, "Length: ")]
    [InlineData(12, 50, 0, 10, "Current: ")]
    [InlineData(12, 50, -1, 10, "Current: ")]
    [InlineData(12, 50, 51, 10, "Current: ")]
    [InlineData(12, 50, 1, 13, "Minimum volts: ")]
    [InlineData(12, 50, 1, -1, "Minimum volts: ")]
    public void AFigureThatMakesNoSenseIsNamed(int supply, int metres, int amps, int least, string named) =>
        Assert.StartsWith(named, Ask(supply, metres, amps, least).Reason, StringComparison.Ordinal);

    [Fact]
    public void AnUnknownGaugeIsNamed() =>
        Assert.StartsWith("Conductor: ",
            WhatIf.Ask(new ConductorSize.Gauge(40), Stranding.Solid, At20, new Voltage(12), Length.FromMetres(1), new Current(1), new Voltage(1)).Reason,
            StringComparison.Ordinal);

    // One loop budget of 1.606 ohm (16 AWG at 200 ft, 20 C, solid): at 1 A the trade's lengths need 16, 18 and 20 AWG, and a little more the next one.
    [Theory]
    [InlineData(49, 22)]
    [InlineData(50, 20)]
    [InlineData(79, 20)]
    [InlineData(80, 18)]
    [InlineData(125, 18)]
    [InlineData(127, 16)]
    [InlineData(200, 16)]
    [InlineData(201, 14)]
    [InlineData(317, 14)]
    [InlineData(320, 12)]
    [InlineData(505, 12)]
    [InlineData(507, 10)]
    [InlineData(800, 10)]
    public void TheThinnestGaugeThatServesIsNamed(int feet, int gauge) =>
        Assert.Equal(gauge, WhatIf.ThinnestGauge(Stranding.Solid, At20, new Voltage(12), Length.FromFeet(feet), new Current(1), new Voltage(12 - 1.6063m)));

    [Fact]
    public void AGaugeServesWhereJustTheLeastArrives()
    {
        var (supply, length, current) = (new Voltage(12), Length.FromFeet(100), new Current(1));
        var arrives = WhatIf.Ask(new ConductorSize.Gauge(18), Stranding.Solid, At20, supply, length, current, new Voltage(0)).Value.Arrives;
        Assert.Equal(18, WhatIf.ThinnestGauge(Stranding.Solid, At20, supply, length, current, arrives));
    }

    [Theory]
    [InlineData(60, 50, 1, 10)]
    [InlineData(12, 1000, 1, 10)]
    [InlineData(12, 50, 50, 10)]
    [InlineData(12, 50, 1, 0)]
    [InlineData(12, 50, 1, 12)]
    public void TheLastFigureThatMakesSenseIsTaken(int supply, int metres, int amps, int least) => Assert.True(Ask(supply, metres, amps, least).Ok);

    [Fact]
    public void WhereNoneServesNoneIsNamed() =>
        Assert.Null(WhatIf.ThinnestGauge(Stranding.Solid, At20, new Voltage(12), Length.FromMetres(900), new Current(10), new Voltage(11)));

    // Three units of 1 A, 10 m apart, the first 20 m from the panel, 1 mm2 solid: 12 - 0.0362 x (20 x 3 + 10 x 2 + 10 x 1) = 8.742 V at the last.
    [Fact]
    public void SeveralUnitsOnOneCableAddUp()
    {
        var answer = Several(20, 3, 10, 8).Value;
        Assert.Equal(new Voltage(8.742m), answer.Arrives);
        Assert.Equal([3, 2, 1], answer.Each.Select(t => t.Through.Amperes));
        Assert.Equal(Length.FromMetres(40), answer.ToLast);
        Assert.False(answer.IsAllowed);
        Assert.False((answer with { Allowed = 2 }).IsAllowed);
        Assert.True((answer with { Allowed = 3 }).IsAllowed);
        Assert.True((Ask(12, 50, 1, 10).Value with { Allowed = 0 }).IsAllowed);
    }

    [Fact]
    public void WhereTheUnitsLieTooFarApartNoRunIsShortEnough()
    {
        var apart = Several(20, 8, 1000, 8);
        Assert.True(apart.Ok);
        Assert.Equal(Length.Zero, apart.Value.Longest);
        Assert.Equal(Length.Zero, (apart.Value with { Table = Length.FromMetres(40) }).LongestByTable);
    }

    // At the longest run just the least arrives at the last unit, for any number of them.
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 5)]
    [InlineData(3, 10)]
    [InlineData(8, 1)]
    public void AtTheLongestRunJustTheLeastArrivesAtTheLast(int units, int apart)
    {
        var longest = Several(1, units, apart, 8).Value.Longest;
        var there = WhatIf.Ask(new ConductorSize.Metric(1), Stranding.Solid, At20, new Voltage(12), longest, new Current(1), new Voltage(8), units,
            Length.FromMetres(apart)).Value;
        Assert.InRange(there.Margin.Volts, -0.000001m, 0.000001m);
    }

    [Fact]
    public void TheTighterOfTableAndVoltageGoverns()
    {
        var answer = Ask(12, 50, 1, 10).Value;
        Assert.False(answer.TableGoverns);
        Assert.Equal(answer.Longest - Length.FromMetres(50), answer.MarginLength);
        var table = answer with { Table = Length.FromMetres(40) };
        Assert.True(table.TableGoverns);
        Assert.Equal(Length.FromMetres(-10), table.MarginLength);
        Assert.True((answer with { Table = answer.Longest }).TableGoverns);
        Assert.False((answer with { Table = answer.Longest + Length.FromMillimetres(1) }).TableGoverns);
        Assert.Equal(Length.FromMetres(30), (Several(20, 2, 10, 8).Value with { Table = Length.FromMetres(40) }).LongestByTable);
    }

    [Theory]
    [InlineData(0, 1, "Units: ")]
    [InlineData(-1, 1, "Units: ")]
    [InlineData(9, 1, "Units: ")]
    [InlineData(2, -1, "Apart: ")]
    [InlineData(2, 1001, "Apart: ")]
    public void SoManyUnitsThatMakeNoSenseAreNamed(int units, int apart, string named) =>
        Assert.StartsWith(named, Several(20, units, apart, 8).Reason, StringComparison.Ordinal);

    private static Result<WhatIf> Several(int metres, int units, int apart, int least) =>
        WhatIf.Ask(new ConductorSize.Metric(1), Stranding.Solid, At20, new Voltage(12), Length.FromMetres(metres), new Current(1), new Voltage(least), units,
            Length.FromMetres(apart));

    private static Result<WhatIf> Ask(int supply, int metres, int amps, int least) =>
        WhatIf.Ask(new ConductorSize.Metric(1), Stranding.Solid, At20, new Voltage(supply), Length.FromMetres(metres), new Current(amps), new Voltage(least));
}

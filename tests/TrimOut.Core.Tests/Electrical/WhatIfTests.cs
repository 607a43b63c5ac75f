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
    [InlineData(12, 50, 1, 13, "Least volts: ")]
    [InlineData(12, 50, 1, -1, "Least volts: ")]
    public void AFigureThatMakesNoSenseIsNamed(int supply, int metres, int amps, int least, string named) =>
        Assert.StartsWith(named, Ask(supply, metres, amps, least).Reason, StringComparison.Ordinal);

    [Fact]
    public void AnUnknownGaugeIsNamed() =>
        Assert.StartsWith("Conductor: ", WhatIf.Ask(new ConductorSize.Gauge(40), Stranding.Solid, At20, new Voltage(12), Length.FromMetres(1), new Current(1), new Voltage(1)).Reason, StringComparison.Ordinal);

    // One loop budget of 1.606 ohm (16 AWG at 200 ft, 20 C, solid): at 1 A the trade's lengths need 16, 18 and 20 AWG, and a little more the next one.
    [Theory]
    [InlineData(79, 20)]
    [InlineData(80, 18)]
    [InlineData(125, 18)]
    [InlineData(127, 16)]
    [InlineData(200, 16)]
    [InlineData(201, 14)]
    public void TheThinnestGaugeThatServesIsNamed(int feet, int gauge) =>
        Assert.Equal(gauge, WhatIf.ThinnestGauge(Stranding.Solid, At20, new Voltage(12), Length.FromFeet(feet), new Current(1), new Voltage(12 - 1.6063m)));

    [Fact]
    public void WhereNoneServesNoneIsNamed() =>
        Assert.Null(WhatIf.ThinnestGauge(Stranding.Solid, At20, new Voltage(12), Length.FromMetres(900), new Current(10), new Voltage(11)));

    private static Result<WhatIf> Ask(int supply, int metres, int amps, int least) =>
        WhatIf.Ask(new ConductorSize.Metric(1), Stranding.Solid, At20, new Voltage(supply), Length.FromMetres(metres), new Current(amps), new Voltage(least));
}

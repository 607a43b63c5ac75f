using TrimOut.Core.Electrical;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class RunLimitsTests
{
    // 0.01 ohm per metre: 90 m one way lose 1.8 V at 1 A.
    private static readonly RunLimits Limits = new(new Voltage(12), new Voltage(10.2m), new Current(0.8m), new Current(1), 0.01m, Length.FromMetres(60));

    [Fact]
    public void TheLargerCurrentDecides()
    {
        Assert.Equal(Length.FromMetres(90), Limits.ByVolts);
        Assert.Equal(new Current(1), Limits.Worst);
        Assert.Equal(new Current(1.2m), (Limits with { Running = new Current(1.2m) }).Worst);
        Assert.Equal(new Voltage(12 - 1.2m - 10.2m), (Limits with { Running = new Current(1.2m) }).MarginVolts(Length.FromMetres(50)));
        Assert.Equal(new Voltage(10.2m), Limits.WhileStarting(Length.FromMetres(90)));
        Assert.Equal(new Voltage(10.56m), Limits.WhileRunning(Length.FromMetres(90)));
    }

    [Fact]
    public void TheTighterOfTableAndVoltageGoverns()
    {
        Assert.True(Limits.TableGoverns);
        Assert.Equal(Length.FromMetres(60), Limits.Governing);
        var loose = Limits with { Table = Length.FromMetres(120) };
        Assert.False(loose.TableGoverns);
        Assert.Equal(Length.FromMetres(90), loose.Governing);
        Assert.True((Limits with { Table = Length.FromMetres(90) }).TableGoverns);
        Assert.False((Limits with { Table = null }).TableGoverns);
        Assert.Equal(Length.FromMetres(90), (Limits with { Table = null }).Governing);
    }

    [Fact]
    public void TheMarginIsInVoltsAndInLength()
    {
        Assert.Equal(new Voltage(0.8m), Limits.MarginVolts(Length.FromMetres(50)));
        Assert.Equal(Length.FromMetres(10), Limits.MarginLength(Length.FromMetres(50)));
        Assert.Equal(Length.FromMetres(-10), Limits.MarginLength(Length.FromMetres(70)));
    }
}

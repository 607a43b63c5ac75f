using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class ConductorSizeTests
{
    [Theory]
    [InlineData("16 AWG", "16 AWG")]
    [InlineData("16", "16 AWG")]
    [InlineData("#18", "18 AWG")]
    [InlineData("20ga", "20 AWG")]
    [InlineData("1.5 mm2", "1.5 mm2")]
    [InlineData("0.75mm²", "0.75 mm2")]
    public void ReadsGaugesAndMetricSizes(string typed, string shown)
    {
        Assert.Equal(shown, ConductorSize.Read(typed).Value.ToString());
        Assert.Equal(ConductorSize.Read(typed).Value, ConductorSize.Read(shown).Value);
    }

    [Theory]
    [InlineData("")]
    [InlineData("37")]
    [InlineData("-2")]
    [InlineData("thick")]
    [InlineData("0 mm2")]
    [InlineData("NaN")]
    public void RefusesWhatIsNone(string typed) => Assert.Contains("is no conductor size", ConductorSize.Read(typed).Reason!, StringComparison.Ordinal);
}

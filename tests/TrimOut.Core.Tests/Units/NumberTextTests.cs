using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class NumberTextTests
{
    [Theory]
    [InlineData("12.1", 12.1)]
    [InlineData("12.1 V", 12.1)]
    [InlineData("12100 mV", 12.1)]
    [InlineData("-3", -3)]
    public void ReadsANumberWithItsUnit(string typed, double value) =>
        Assert.Equal((decimal)value, NumberText.Read(typed, "volts", -60, 60, ("", 1), ("v", 1), ("mv", 0.001m)).Value);

    [Theory]
    [InlineData("", "Nothing was typed")]
    [InlineData("61", "out of range: volts go from -60 to 60")]
    [InlineData("12 A", "is no number of volts")]
    [InlineData("NaN", "is no number of volts")]
    [InlineData("1e2", "is no number of volts")]
    [InlineData("12,1", "decimals with a point")]
    [InlineData("79228162514264337593543950335", "out of range")]
    [InlineData("99999999999999999999999999999999999", "is no number")]
    public void NamesWhatIsWrong(string typed, string because) =>
        Assert.Contains(because, NumberText.Read(typed, "volts", -60, 60, ("", 1), ("v", 1)).Reason!, StringComparison.Ordinal);
}

using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Tests;

public class DecimalsTests
{
    [Theory]
    [InlineData("54 ft|81.3 ft|pulled", "54.0 ft|81.3 ft|pulled")]
    [InlineData("0.21 ohm|1.1 ohm|-", "0.21 ohm|1.10 ohm|-")]
    [InlineData("~165 ft|112.5 ft|", "~165.0 ft|112.5 ft|")]
    [InlineData("12|8", "12|8")]
    [InlineData("-0.5 V|24 V", "-0.5 V|24.0 V")]
    [InlineData("45 1/2\"|3 ft 2", "45 1/2\"|3 ft 2")]
    public void FiguresOfOneColumnHaveOneNumberOfDecimals(string column, string shown) =>
        Assert.Equal(shown.Split('|'), Decimals.Alike(column.Split('|')));
}

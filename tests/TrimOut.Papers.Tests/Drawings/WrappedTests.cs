using TrimOut.Papers.Drawings;

namespace TrimOut.Papers.Tests.Drawings;

public class WrappedTests
{
    [Theory]
    [InlineData("entry 25 mm down, 1 1/2\" back", 80, "entry 25 mm|down,|1 1/2\" back")]
    [InlineData("one two", 1000, "one two")]
    [InlineData("averylongwordindeed x", 40, "averylongwordindeed|x")]
    [InlineData("", 40, "")]
    [InlineData("12 34", 10, "12 34")]
    public void ALineHoldsWhatItHasRoomForAndAFigureStaysWithItsUnit(string text, double room, string lines) =>
        Assert.Equal(lines.Split('|'), Wrapped.Lines(text, room));

    [Fact]
    public void NoTypedTextStopsIt() =>
        Assert.All(HostileText.All, t => Assert.Equal(t, string.Join(' ', Wrapped.Lines(t, 30))));
}

using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class StackTests
{
    // 2 1/2 in and 0.04 of 60 in: 2.5 + 2.4 = 4.9 in (worked out by hand; the figures are common practice, no published source).
    [Fact]
    public void TheStackIsItsFixedPartAndItsShareOfTheDrop() => Assert.Equal(4.9m, Stack.Height(Inches(2.5m), 0.04m, Inches(60)).Inches);

    [Fact]
    public void WithoutADropOnlyTheFixedPartIsLeft() => Assert.Equal(Inches(3), Stack.Height(Inches(3), 1, Length.Zero));

    [Theory]
    [InlineData(-1, 0.1, 60, "fixedPart")]
    [InlineData(1, -0.1, 60, "share")]
    [InlineData(1, 1.1, 60, "share")]
    [InlineData(1, 0.1, -60, "drop")]
    public void AFigureThatMakesNoSenseIsNamed(double fixedPart, double share, double drop, string named) =>
        Assert.Equal(named,
            Assert.ThrowsAny<ArgumentException>(() => Stack.Height(Inches((decimal)fixedPart), (decimal)share, Inches((decimal)drop))).ParamName);

    private static Length Inches(decimal inches) => Length.FromInches(inches);
}

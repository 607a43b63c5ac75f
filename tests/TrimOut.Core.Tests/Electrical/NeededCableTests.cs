using TrimOut.Core.Electrical;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class NeededCableTests
{
    [Fact]
    public void LegsWithTheAllowanceAndBothTails() =>
        Assert.Equal(Length.FromFeet(75), NeededCable.Of(Length.FromFeet(60), Length.FromFeet(3), Length.FromFeet(6), 10));

    [Theory]
    [InlineData(-1, 3, 6, 10)]
    [InlineData(60, -1, 6, 10)]
    [InlineData(60, 3, -1, 10)]
    [InlineData(60, 3, 6, -1)]
    public void LessThanNothingIsRefused(int legs, int window, int panel, int percent) => Assert.Throws<ArgumentOutOfRangeException>(() =>
        NeededCable.Of(Length.FromFeet(legs), Length.FromFeet(window), Length.FromFeet(panel), percent));

    [Fact]
    public void NoAllowanceAddsNothing() => Assert.Equal(Length.FromFeet(69), NeededCable.Of(Length.FromFeet(60), Length.FromFeet(3), Length.FromFeet(6), 0));
}

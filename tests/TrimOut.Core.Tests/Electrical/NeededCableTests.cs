using TrimOut.Core.Electrical;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Electrical;

public class NeededCableTests
{
    [Fact]
    public void LegsWithTheAllowanceAndBothTails() =>
        Assert.Equal(Length.FromFeet(75), NeededCable.Of(Length.FromFeet(60), Length.FromFeet(3), Length.FromFeet(6), 10));

    [Fact]
    public void NoAllowanceAddsNothing() => Assert.Equal(Length.FromFeet(69), NeededCable.Of(Length.FromFeet(60), Length.FromFeet(3), Length.FromFeet(6), 0));
}

using CsCheck;
using TrimOut.Core.Facts;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class TailPathTests
{
    [Fact]
    public void FromTheMotorsSideItGoesUpInAndBehind() => Assert.Equal(In(8), TailPath.ToMotor(In(36), In(1), In(1), atMotorEnd: true, In(6)));

    [Fact]
    public void FromTheOtherSideItCrossesTheHead() => Assert.Equal(In(42), TailPath.ToMotor(In(36), In(1), In(1), atMotorEnd: false, In(6)));

    [Fact]
    public void TheOtherSideIsNeverNearerUnlessTheEntryIsPastTheMiddle() => Gen.Select(Gen.Int[10, 200], Gen.Int[0, 200]).Sample((width, jamb) =>
        TailPath.ToMotor(In(width), In(jamb), In(0), false, In(6)) >= TailPath.ToMotor(In(width), In(jamb), In(0), true, In(6)) || jamb * 2 > width);

    private static Length In(int inches) => Length.FromInches(inches);
}

using CsCheck;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class TailPathTests
{
    [Fact]
    public void FromTheMotorsSideItGoesUpInAndBehind() => Assert.Equal(In(8), TailPath.ToMotor(In(1), In(0), In(1), In(6)));

    [Fact]
    public void FromTheOtherSideItCrossesTheHead() => Assert.Equal(In(42), TailPath.ToMotor(In(35), In(0), In(1), In(6)));

    [Fact]
    public void ItIsTheSameFromEitherSide() => Gen.Select(Gen.Int[0, 200], Gen.Int[0, 200]).Sample((entry, motor) =>
        TailPath.ToMotor(In(entry), In(motor), In(0), In(6)) == TailPath.ToMotor(In(200 - entry), In(200 - motor), In(0), In(6)));

    private static Length In(int inches) => Length.FromInches(inches);
}

using CsCheck;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class OrderSizeTests
{
    private static readonly Length Eighth = Length.FromInches(0, 1, 8);

    [Fact]
    public void InsideItGoesInAndReaches() => Gen.Int[64, 20_000].Sample(k =>
    {
        var length = Length.FromInches(0, k, 64);
        Assert.True(OrderSize.InsideWidth(length, Eighth) <= length && length - OrderSize.InsideWidth(length, Eighth) < Eighth);
        Assert.True(OrderSize.InsideHeight(length, Eighth) >= length && OrderSize.InsideHeight(length, Eighth) - length < Eighth);
    });

    [Fact]
    public void OutsideItCovers()
    {
        Assert.Equal(Length.FromInches(42, 1, 8), OrderSize.OutsideWidth(Length.FromInches(36, 1, 16), Length.FromInches(3), Eighth));
        Assert.Equal(Length.FromInches(64), OrderSize.OutsideHeight(Length.FromInches(60), Length.FromInches(4), Eighth));
    }
}

using CsCheck;
using TrimOut.Core.Facts;
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
        var width = OrderSize.InsideWidth(length, length, null, null, Eighth);
        Assert.True(width <= length && length - width < Eighth);
        Assert.True(OrderSize.InsideHeight(length, Eighth) >= length && OrderSize.InsideHeight(length, Eighth) - length < Eighth);
    });

    // 36 in at its narrowest, of which 35 1/2 in hang plumb: what the maker takes off covers the lean as far as it goes.
    [Theory]
    [InlineData(OrderedWidth.Opening, 0, "35 1/2")]
    [InlineData(OrderedWidth.Opening, 2, "35 3/4")]
    [InlineData(OrderedWidth.Opening, 8, "36")]
    [InlineData(OrderedWidth.Made, 0, "35 1/2")]
    [InlineData(OrderedWidth.Made, 2, "35 1/2")]
    [InlineData(OrderedWidth.Made, 8, "35")]
    public void WhatComesOffTheWidthCoversALean(OrderedWidth ordered, int eighths, string order) => Assert.Equal(
        LengthText.Read(order, DisplayUnits.Inches).Value,
        OrderSize.InsideWidth(Length.FromInches(36), Length.FromInches(35, 1, 2), ordered, Length.FromInches(0, eighths, 8), Eighth));

    // While the sheet does not say what comes off, the smallest width is ordered.
    [Theory]
    [InlineData(OrderedWidth.Opening)]
    [InlineData(OrderedWidth.Made)]
    public void WhatIsNotKnownToComeOffCoversNothing(OrderedWidth ordered) =>
        Assert.Equal(Length.FromInches(36), OrderSize.InsideWidth(Length.FromInches(36), Length.FromInches(35, 1, 2), ordered, null, Eighth));

    [Fact]
    public void FiguresThatNoOpeningHasAreRefused()
    {
        var (inch, less) = (Length.FromInches(1), Length.FromInches(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderSize.InsideWidth(Length.Zero, inch, null, null, Eighth));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderSize.InsideWidth(inch, inch, OrderedWidth.Opening, less, Eighth));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderSize.InsideWidth(inch, inch, OrderedWidth.Made, less, Eighth));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderSize.InsideHeight(Length.Zero, Eighth));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderSize.OutsideWidth(inch, less, Eighth));
        Assert.Throws<ArgumentOutOfRangeException>(() => OrderSize.OutsideHeight(inch, less, Eighth));
    }

    [Fact]
    public void OutsideItCovers()
    {
        Assert.Equal(Length.FromInches(42, 1, 8), OrderSize.OutsideWidth(Length.FromInches(36, 1, 16), Length.FromInches(3), Eighth));
        Assert.Equal(Length.FromInches(64), OrderSize.OutsideHeight(Length.FromInches(60), Length.FromInches(4), Eighth));
    }
}

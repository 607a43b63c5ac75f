using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class FootprintTests
{
    private static readonly Footprint Bracket = new(Mm(100), Mm(140), Mm(40), Mm(100), Mm(60));

    [Theory]
    [InlineData(120, 70, 20, true)]    // in the middle of it
    [InlineData(145, 70, 20, false)]   // 5 mm beside it, as the hole is half wide
    [InlineData(144, 70, 20, true)]
    [InlineData(96, 70, 20, true)]
    [InlineData(95, 70, 20, false)]
    [InlineData(120, 105, 20, false)]
    [InlineData(120, 104, 20, true)]
    [InlineData(120, 70, 65, false)]
    [InlineData(120, 70, 64, true)]
    [InlineData(143, 104, 20, false)]  // 3 and 4 mm past a corner: 5 mm away
    [InlineData(143, 103, 20, true)]
    public void AHoleOfTenMillimetresIsCaughtWhereItComesNearerThanFive(int along, int back, int below, bool caught) =>
        Assert.Equal(caught, Bracket.Covers(Mm(along), Mm(back), Mm(below), Mm(5)));

    [Fact]
    public void AtTheJambItReachesAsFarAsTheJambDoes() =>
        Assert.True(new Footprint(Mm(0), Mm(20), Mm(40), Mm(100), Mm(60)).Covers(Mm(0), Mm(70), Mm(0), Mm(0)));

    [Theory]
    [InlineData(101, 70, 20, true)]
    [InlineData(100, 70, 20, false)]
    [InlineData(139, 70, 20, true)]
    [InlineData(140, 70, 20, false)]
    [InlineData(120, 41, 20, true)]
    [InlineData(120, 40, 20, false)]
    [InlineData(120, 99, 20, true)]
    [InlineData(120, 100, 20, false)]
    [InlineData(120, 70, 59, true)]
    [InlineData(120, 70, 60, false)]
    public void ACableOfNoWidthIsCaughtInsideAndClearOnTheEdge(int along, int back, int below, bool caught) =>
        Assert.Equal(caught, Bracket.Covers(Mm(along), Mm(back), Mm(below), Mm(0)));

    // A hole that was noted a little behind the jamb or above the head is in the corner where the bracket sits.
    [Theory]
    [InlineData(-4, 20, true)]
    [InlineData(-10, 20, true)]
    [InlineData(10, -4, true)]
    [InlineData(-400, 20, false)]
    [InlineData(10, -400, false)]
    public void ABracketAtTheJambReachesToTheJambAndTheHead(int along, int below, bool caught) =>
        Assert.Equal(caught, new Footprint(Mm(0), Mm(20), Mm(40), Mm(100), Mm(60)).Covers(Mm(along), Mm(70), Mm(below), Mm(5)));

    [Fact]
    public void AHoleOfLessThanNothingIsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Bracket.Covers(Mm(120), Mm(70), Mm(20), Mm(-1)));

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}

using CsCheck;
using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class PlumbWidthTests
{
    // 36 x 60 in, its top 1/4 in to one side: diagonals by the cosine rule, sqrt(36.25^2 + 60^2) and sqrt(35.75^2 + 60^2).
    [Fact]
    public void InAParallelogramItIsTheWidthLessTheLean()
    {
        var (down, up) = (Length.FromInches((decimal)Math.Sqrt((35.75 * 35.75) + 3600)), Length.FromInches((decimal)Math.Sqrt((36.25 * 36.25) + 3600)));
        Assert.Equal(35.75m, Math.Round(PlumbWidth.Of(In(36), In(36), In(36), down, up).Inches, 6));
        Assert.Equal(35.75m, Math.Round(PlumbWidth.Of(In(36), In(36), In(36), up, down).Inches, 6));
    }

    [Fact]
    public void InARectangleItIsTheWidth() => Assert.Equal(In(36), PlumbWidth.Of(In(36), In(36), In(36), In(70), In(70)));

    [Fact]
    public void OfUpperAndLowerWidthTheSmallerCounts() => Assert.Equal(In(35), PlumbWidth.Of(In(35), Length.FromInches(35, 1, 2), In(36), In(70), In(70)));

    [Fact]
    public void ABowAtTheMiddleCounts() => Assert.Equal(In(35), PlumbWidth.Of(In(36), In(35), In(36), In(70), In(70)));

    // Corners are put where they are; what is free between the two jambs is cut out of them, corner by corner.
    [Fact]
    public void ItIsWhatIsFreeBetweenTheJambsOfAnyOpening() =>
        Gen.Select(Gen.Int[500, 2500], Gen.Int[600, 2400], Gen.Int[-30, 30], Gen.Int[-30, 30]).Sample((bottom, height, left, right) =>
    {
        var free = Math.Min(bottom, bottom + right) - Math.Max(0, left);
        var top = bottom + right - left;
        var down = Math.Sqrt(Math.Pow(bottom - left, 2) + Math.Pow(height, 2));
        var up = Math.Sqrt(Math.Pow(bottom + right, 2) + Math.Pow(height, 2));
        var plumb = PlumbWidth.Of(Mm(top), Mm((top + bottom) / 2.0), Mm(bottom), Mm(down), Mm(up));
        Assert.Equal(free, (double)plumb.Millimetres, 1e-3);
    });

    private static Length In(int inches) => Length.FromInches(inches);

    private static Length Mm(double millimetres) => Length.FromMillimetres((decimal)millimetres);
}

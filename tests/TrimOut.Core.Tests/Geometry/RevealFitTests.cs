using TrimOut.Core.Geometry;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Geometry;

public class RevealFitTests
{
    [Theory]
    [InlineData(4.5, RevealFit.Flush)]
    [InlineData(4.4, RevealFit.FlushWithLessSetback)]
    [InlineData(3.0, RevealFit.FlushWithLessSetback)]
    [InlineData(2.9, RevealFit.StandsOut)]
    [InlineData(2.5, RevealFit.StandsOut)]
    [InlineData(2.4, RevealFit.DoesNotFit)]
    public void ACoverThreeInchesDeepSetBackAnInchAndAHalf(double depth, RevealFit fit) =>
        Assert.Equal(fit, RevealFits.Of(Length.FromInches((decimal)depth), Length.FromInches(1.5m), Length.FromInches(3), Length.FromInches(2.5m)));
}

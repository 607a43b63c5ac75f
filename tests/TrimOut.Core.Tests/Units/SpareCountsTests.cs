using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class SpareCountsTests
{
    [Theory]
    [InlineData("2 Handheld", "2 Handheld")]
    [InlineData("10% screws", "10 % screws")]
    [InlineData("10%screws,  3 splice connectors ,", "10 % screws, 3 splice connectors")]
    [InlineData("1 2-gang wall plate", "1 2-gang wall plate")]
    public void ACountOrPercentAndANameAreRead(string typed, string shown) => Assert.Equal(shown, SpareCounts.Read(typed).Value.ToString());

    [Theory]
    [InlineData("")]
    [InlineData(",")]
    [InlineData("screws")]
    [InlineData("0 screws")]
    [InlineData("1000 screws")]
    [InlineData("101 % screws")]
    [InlineData("10 %")]
    [InlineData("-2 screws")]
    [InlineData("2.5 screws")]
    public void WhatDoesNotSayHowManyOfWhatIsRefused(string typed) => Assert.False(SpareCounts.Read(typed).Ok);

    // A tenth of 24 is 2.4, and nobody sells less than a whole screw.
    [Theory]
    [InlineData("10 % screws", 24, 3)]
    [InlineData("10 % screws", 20, 2)]
    [InlineData("10 % screws", 0, 0)]
    [InlineData("2 screws", 24, 2)]
    [InlineData("2 screws", 0, 2)]
    public void PercentAreRoundedUpAndPiecesStay(string typed, int taken, int spare) => Assert.Equal(spare, SpareCounts.Read(typed).Value.Parts[0].Of(taken));
}

using TrimOut.HouseFile.Schedules;

namespace TrimOut.HouseFile.Tests.Schedules;

public class SizeTextTests
{
    /// <summary>Width first, feet and inches (greathousedesign.com, a generic plan service: 4050 and 2668).</summary>
    [Theory]
    [InlineData("4050", "4'-0\"", "5'-0\"")]
    [InlineData("2668", "2'-6\"", "6'-8\"")]
    [InlineData("36 x 60", "36", "60")]
    [InlineData("36x60", "36", "60")]
    [InlineData("3'-0\" x 5'-0\"", "3'-0\"", "5'-0\"")]
    [InlineData("915 x 1830mm", "915 mm", "1830mm")]
    [InlineData("60H x 36W", "36", "60")]
    [InlineData("36w × 60h", "36", "60")]
    [InlineData("45 1/2\" by 60\"", "45 1/2\"", "60\"")]
    public void SizesAreReadWidthFirst(string cell, string width, string height)
    {
        var read = SizeText.Read(cell).Value;
        Assert.Equal((width, height), (read.Width, read.Height));
        Assert.StartsWith(cell + " read as ", read.Understood);
    }

    [Theory]
    [InlineData("big")]
    [InlineData("36")]
    [InlineData("36 x 60 x 4")]
    [InlineData("36x")]
    [InlineData("0050")]
    [InlineData("40500")]
    [InlineData("36w x 60w")]
    public void WhatIsNoSizeIsRefused(string cell) => Assert.False(SizeText.Read(cell).Ok);
}

using CsCheck;
using TrimOut.Core.Units;

namespace TrimOut.Core.Tests.Units;

public class PartCountsTests
{
    [Fact]
    public void CountsAndNamesAreRead() =>
        Assert.Equal("2 end brackets, 6 screws 8 x 1 1/4", PartCounts.Read(" 2 end brackets,6 screws 8 x 1 1/4 ,").Value.ToString());

    [Theory]
    [InlineData("")]
    [InlineData(",")]
    [InlineData("screws")]
    [InlineData("0 screws")]
    [InlineData("-2 screws")]
    [InlineData("1000 screws")]
    [InlineData("1.5 screws")]
    [InlineData("2")]
    [InlineData("99999999999999999999 screws")]
    public void WhatIsNoCountIsRefused(string typed) => Assert.Contains("such as 2 end brackets", PartCounts.Read(typed).Reason!, StringComparison.Ordinal);

    [Fact]
    public void WhatWasPrintedReadsBack() => Gen.Select(Gen.Int[1, 999], Gen.String[Gen.Char['a', 'z'], 1, 12]).Array[1, 6].Sample(parts =>
    {
        var text = string.Join(", ", parts.Select(p => $"{p.Item1} {p.Item2}"));
        Assert.Equal(text, PartCounts.Read(text).Value.ToString());
        Assert.Equal(PartCounts.Read(text).Value, PartCounts.Read(text).Value);
    });
}

using TrimOut.Core.History;

namespace TrimOut.Core.Tests.History;

public class SeenTests
{
    private static readonly Seen Two = Seen.Of([new ChangeId("b", 2), new ChangeId("a", 3), new ChangeId("b", 1)]);

    [Fact]
    public void ItIsStoredAsTheLastOfEachDeviceInTheOrderOfTheirNames()
    {
        Assert.Equal("a:3 b:2", Two.ToString());
        Assert.Equal("b:2", Two.Without("a"));
        Assert.Equal("a:3 b:2", Two.Without("c"));
        Assert.Equal("a:3 b:2", Seen.Read("b:2 a:3")!.ToString());
    }

    [Fact]
    public void ItCoversWhateverADeviceDidUpToItsLast()
    {
        Assert.True(Two.Covers(new ChangeId("b", 1)));
        Assert.True(Two.Covers(new ChangeId("b", 2)));
        Assert.False(Two.Covers(new ChangeId("b", 3)));
        Assert.False(Two.Covers(new ChangeId("c", 1)));
    }

    [Theory]
    [InlineData("yes")]
    [InlineData("")]
    [InlineData("a:3 b")]
    [InlineData("a:3  b:2")]
    public void WhatDoesNotSayIsNone(string stored) => Assert.Null(Seen.Read(stored));

    [Fact]
    public void MoreIsAddedAndNothingLost() =>
        Assert.Equal("a:3 b:4 c:1", Two.With([new ChangeId("b", 4), new ChangeId("c", 1), new ChangeId("a", 1)]).ToString());
}

using TrimOut.Core.History;

namespace TrimOut.Office.Tests;

public class HeldChangesTests
{
    [Fact]
    public void EachNumberIsHeldOnlyWhereItWasSaid()
    {
        var held = HeldChanges.Of([new("a", 1), new("a", 2), new("a", 4), new("b-c", 7), new("a", 2)]);
        Assert.Equal("a:1-2,4 b-c:7", held.ToString());
        Assert.Equal(4, held.Count);
        Assert.True(held.Has(new ChangeId("a", 4)));
        Assert.False(held.Has(new ChangeId("a", 3)));
        Assert.False(held.Has(new ChangeId("c", 7)));
        Assert.Equal("a:1-4 b-c:7 d:1", held.With(HeldChanges.Of([new("a", 3), new("d", 1)])).ToString());
        Assert.Equal(held.ToString(), HeldChanges.Read(held.ToString()).Value.ToString());
        Assert.Equal(0, HeldChanges.Read("").Value.Count);
    }

    [Theory]
    [InlineData("a")]
    [InlineData("a:")]
    [InlineData("a:0")]
    [InlineData("a:3-2")]
    [InlineData("a:1-2-3")]
    [InlineData(":1")]
    [InlineData("a:1,")]
    [InlineData("a:x")]
    public void WhatNamesNoChangesIsRefused(string text) => Assert.False(HeldChanges.Read(text).Ok);
}

using TrimOut.Desks;
using TrimOut.Verbs;

namespace TrimOut.Tests.Verbs;

/// <summary>Who says whether the mouse is taken: the option, then the variable, then what F4 left.</summary>
public class MouseOptionTests
{
    [Theory]
    [InlineData(null, null, null)]
    [InlineData("off", null, false)]
    [InlineData("on", null, true)]
    [InlineData(null, "off", false)]
    [InlineData(null, " ON ", true)]
    [InlineData("on", "off", true)]
    [InlineData("off", "on", false)]
    [InlineData(null, "", null)]
    public void TheOptionGoesBeforeTheVariable(string? option, string? variable, bool? takes) =>
        Assert.Equal(takes, MouseOption.Of(option, variable, said => Assert.Fail(said)));

    [Fact]
    public void AVariableThatSaysNeitherIsSpokenOfAndChangesNothing()
    {
        var said = new List<string>();
        Assert.Null(MouseOption.Of(null, "maybe", said.Add));
        Assert.Equal("TRIMOUT_MOUSE is \"maybe\", which is neither on nor off. The mouse is as F4 left it last.", Assert.Single(said));
        Assert.True(MouseOption.Of("on", "maybe", said.Add));
        Assert.Single(said);
    }

    [Fact]
    public void WhatIsSaidThisTimeIsWhatTheScreensGoBy()
    {
        Assert.False(new Desk("Ash", mouse: false).TakesMouse);
        Assert.True(new Desk("Ash", mouse: true).TakesMouse);
    }
}

using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Tests;

public class TextWidthTests
{
    [Theory]
    [InlineData("Kitchen", 7)]
    [InlineData("台所", 4)]
    [InlineData("e\u0301tage", 5)]
    [InlineData("", 0)]
    public void CellsAreCountedAsTheTerminalCountsThem(string text, int cells) => Assert.Equal(cells, TextWidth.Of(text));

    [Theory]
    [InlineData("Breakfast nook", 9, "Breakfas…")]
    [InlineData("台所と居間", 6, "台所…")]
    [InlineData("Study", 5, "Study")]
    [InlineData("Study", 0, "")]
    public void WhatDoesNotFitIsCutWithAnEllipsis(string text, int cells, string expected)
    {
        var fit = TextWidth.Fit(text, cells);
        Assert.Equal(expected, fit);
        Assert.True(TextWidth.Of(fit) <= cells);
    }

    [Fact]
    public void LinesBreakAtSpacesAndLongWordsAreBrokenWhereTheyMust() =>
        Assert.Equal(["The tail", "is 14 in;", "abcdefghi", "jkl"], TextWidth.Wrap("The tail is 14 in; abcdefghijkl", 9));

    [Fact]
    public void AWideCharacterAtTheEdgeIsLeftOutWhole()
    {
        var frame = new Frame(5, 1);
        frame.All.Put(0, 0, "abcd台");
        Assert.Equal("abcd\n", frame.ToText());
    }

    [Fact]
    public void WritingOverHalfOfAWideCharacterTakesTheOtherHalfAway()
    {
        var frame = new Frame(6, 1);
        frame.All.Put(0, 0, "台所");
        frame.All.Put(1, 0, "x");
        Assert.Equal(" x所\n", frame.ToText());
    }
}

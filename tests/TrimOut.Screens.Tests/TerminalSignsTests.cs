using TrimOut.Screens.Frames;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens.Tests;

public class TerminalSignsTests
{
    [Theory]
    [InlineData("xterm-256color", "", "", ColourDepth.Many)]
    [InlineData("tmux-256color", "", "", ColourDepth.Many)]
    [InlineData("xterm", "truecolor", "", ColourDepth.Many)]
    [InlineData("xterm", "", "", ColourDepth.Sixteen)]
    [InlineData("screen", "", "", ColourDepth.Sixteen)]
    [InlineData("linux", "", "", ColourDepth.Sixteen)]
    [InlineData("dumb", "", "", ColourDepth.None)]
    [InlineData("vt100", "", "", ColourDepth.None)]
    [InlineData("xterm-256color", "", "1", ColourDepth.None)]
    public void ColoursAreThoseThatTheTerminalSaysItHas(string term, string colorTerm, string noColour, ColourDepth expected) =>
        Assert.Equal(expected, TerminalSigns.Colours(Of(("TERM", term), ("COLORTERM", colorTerm), ("NO_COLOR", noColour))));

    [Theory]
    [InlineData("xterm-256color", "C.UTF-8", true)]
    [InlineData("xterm-256color", "POSIX", false)]
    [InlineData("linux", "en_US.UTF-8", false)]
    [InlineData("xterm", "", false)]
    public void DrawnSignsNeedUtf8AndATerminalThatHasThem(string term, string locale, bool drawn) =>
        Assert.Same(drawn ? Glyphs.Drawn : Glyphs.Ascii, TerminalSigns.Best(Of(("TERM", term), ("LANG", locale))));

    private static Func<string, string?> Of(params (string Name, string Value)[] variables) =>
        name => variables.FirstOrDefault(v => v.Name == name).Value;
}

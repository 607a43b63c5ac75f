using TrimOut.Screens.Frames;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens.Tests;

public class TerminalSignsTests
{
    [Theory]
    [InlineData("xterm-256color", "", "", nameof(ColourDepth.Many))]
    [InlineData("tmux-256color", "", "", nameof(ColourDepth.Many))]
    [InlineData("xterm", "truecolor", "", nameof(ColourDepth.Full))]
    [InlineData("tmux-256color", "24bit", "", nameof(ColourDepth.Full))]
    [InlineData("xterm-direct", "", "", nameof(ColourDepth.Full))]
    [InlineData("xterm", "yes", "", nameof(ColourDepth.Many))]
    [InlineData("xterm", "", "", nameof(ColourDepth.Sixteen))]
    [InlineData("screen", "", "", nameof(ColourDepth.Sixteen))]
    [InlineData("linux", "", "", nameof(ColourDepth.Sixteen))]
    [InlineData("dumb", "", "", nameof(ColourDepth.None))]
    [InlineData("vt100", "", "", nameof(ColourDepth.None))]
    [InlineData("xterm-256color", "", "1", nameof(ColourDepth.None))]
    public void ColoursAreThoseThatTheTerminalSaysItHas(string term, string colorTerm, string noColour, string expected) =>
        Assert.Equal(Enum.Parse<ColourDepth>(expected), TerminalSigns.Colours(Of(("TERM", term), ("COLORTERM", colorTerm), ("NO_COLOR", noColour))));

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

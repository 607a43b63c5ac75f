using System.Text;
using TrimOut.Screens.Terminal;

namespace TrimOut.Screens.Tests.Terminal;

/// <summary>What is said to a terminal, held to the sequences as xterm's list has them (from memory): OSC 2, OSC 52, DECSET 1000 and 1006.</summary>
public class TerminalWordsTests
{
    [Fact]
    public void ATitleIsOneOscSequence() => Assert.Equal("\u001b]2;W01, Elm\a", TerminalWords.Title("W01, Elm"));

    [Theory]
    [InlineData("Elm\u001b]52;c;eA==\a")]
    [InlineData("Elm\a\u001b[2J")]
    [InlineData("Elm\u009c\n")]
    public void NoNameEndsTheSequenceOrBeginsAnother(string name)
    {
        var said = TerminalWords.Title(name);
        Assert.DoesNotContain(said[4..^1], c => char.IsControl(c));
        Assert.DoesNotContain(Decoded(TerminalWords.Copy(name)).Replace("\n", "", StringComparison.Ordinal), c => char.IsControl(c));
    }

    [Fact]
    public void CopiedTextIsBase64OfItsUtf8() => Assert.Equal("Ä\tb\n", Decoded(TerminalWords.Copy("Ä\tb\n")));

    [Fact]
    public void MovesOfTheMouseAreNotAskedFor()
    {
        Assert.EndsWith("\u001b[?1000h\u001b[?1006h", TerminalWords.MouseOn, StringComparison.Ordinal);
        Assert.DoesNotContain("1003h", TerminalWords.MouseOn, StringComparison.Ordinal);
        Assert.DoesNotContain('h', TerminalWords.MouseOff);
    }

    [Theory]
    [InlineData("xterm-256color", true)]
    [InlineData("tmux-256color", true)]
    [InlineData("linux", false)]
    [InlineData("dumb", false)]
    [InlineData("vt220", false)]
    [InlineData(null, false)]
    public void OnlyATerminalThatPassesOverWhatItDoesNotKnowIsTold(string? term, bool told) =>
        Assert.Equal(told, TerminalSigns.TakesWords(name => name == "TERM" ? term : null));

    private static string Decoded(string sequence)
    {
        Assert.StartsWith("\u001b]52;c;", sequence, StringComparison.Ordinal);
        Assert.EndsWith("\a", sequence, StringComparison.Ordinal);
        return Encoding.UTF8.GetString(Convert.FromBase64String(sequence[7..^1]));
    }
}

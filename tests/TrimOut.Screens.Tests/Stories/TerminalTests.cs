using Microsoft.Extensions.Time.Testing;
using Terminal.Gui.Input;
using TrimOut.Core.Facts;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

public class TerminalTests
{
    [Theory]
    [InlineData("台所と居間のあいだのとても長い名前の部屋です", "居間")]
    [InlineData("غرفة المعيشة الكبيرة", "غرفة")]
    [InlineData("Bibliothe\u0300que de l'e\u0301tage avec un nom tre\u0300s long", "tage")]
    [InlineData("A gallery with a name that takes sixty characters to write out", "gallery")]
    public void NamesOfEveryScriptAndLengthLeaveTheLayoutWhole(string room, string part)
    {
        var name = room.Length > 60 ? room[..60] : room;
        var job = new TestJob().Window("W01", name).Window("W02", name);
        foreach (var (width, height) in new[] { (80, 24), (140, 40) })
        {
            var shell = new ShellState(new TestDesk(new FakeTimeProvider()), job.Scribe);
            foreach (var key in new[] { "1", "2", "3", "4", "5", "6", "7", "8", "9", "0" })
            {
                shell.Press(key);
                var frame = shell.Draw(width, height);
                for (var y = 0; y < height; y++)
                    Assert.Equal(width, Frames.TextWidth.Of(string.Concat(frame.Row(y).ToArray().Select(c => c.Text))));
            }
            shell.Press("1");
            Assert.Contains(part, shell.Draw(width, height).ToText().Normalize(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ATerminalThatIsTooSmallSaysSoAndLosesNothing()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        Assert.Contains("needs 80 x 24", shell.Draw(60, 20).ToText().Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("W01", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("F1", "f1")]
    [InlineData("F12", "f12")]
    [InlineData("CursorUp", "up")]
    [InlineData("PageDown", "pagedown")]
    [InlineData("Delete", "delete")]
    [InlineData("Space", "space")]
    public void NamedKeysHaveTheNamesOfTheTables(string key, string stroke)
    {
        Assert.True(Key.TryParse(key, out var parsed));
        Assert.Equal(stroke, KeyStrokes.Of(parsed!));
    }

    [Fact]
    public void AltAndCtrlAreToldFromPlainLetters()
    {
        Assert.Equal("alt+p", KeyStrokes.Of(Key.P.WithAlt));
        Assert.Equal("ctrl+p", KeyStrokes.Of(Key.P.WithCtrl));
        Assert.Equal("p", KeyStrokes.Of(new Key('p')));
        Assert.Equal("U", KeyStrokes.Of(new Key('U')));
    }

    [Fact]
    public void KeysThatComeAsEscapeSequencesDoTheSame()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Window("W02").Scribe);
        user.PressThroughThePipeline(Key.CursorDown).PressThroughThePipeline(Key.Enter).Sees("W02, Kitchen");
        user.PressThroughThePipeline(Key.F1).Sees("F1 does nothing here");
    }

    [Fact]
    public void PastedTextGoesIntoTheFieldAsTyped()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe);
        user.Press("0", "down", "enter").Paste("Rowan | <family>\nback door").Press("enter");
        Assert.Equal("Rowan | <family>", user.House.Job.Get(HouseFacts.Client)?[..16]);
    }
}

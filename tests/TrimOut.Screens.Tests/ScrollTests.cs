using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Houses;
using TrimOut.Screens.Cables;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Help;
using TrimOut.Screens.Papers;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>However far one scrolls, the last page is full, and one step back moves at once.</summary>
public class ScrollTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    private static ShellState Ridge => new(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock), Look.Dark);

    [Theory]
    [InlineData(80, 24)]
    [InlineData(140, 40)]
    public void APaperEndsWithItsLastLineAtTheBottom(int width, int height)
    {
        var shell = Ridge;
        var lines = Enumerable.Range(1, 200).Select(n => new PreviewBlock(PreviewKind.Item, 0, "-", [new($"line {n}.")], [])).ToList();
        EndsFull(new Ask.Open(PreviewScreen.Of(new PaperChoice("x", "X", "x"), lines)), shell, width, height, "line 200.");
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(140, 40)]
    public void TheKeysEndWithTheLastOneAtTheBottom(int width, int height)
    {
        var shell = Ridge;
        EndsFull(new Ask.Open(HelpScreen.For(shell)), shell, width, height, HelpScreen.For(shell).Lines[^1].Name);
    }

    private static void EndsFull(Ask.Open open, ShellState shell, int width, int height, string last)
    {
        var screen = open.Screen;
        var area = new Frame(width, height);
        screen.Draw(area.All, shell.Context, null);
        var down = screen.Keys.First(k => k.Strokes[0] == "end");
        screen = down.Press(screen, shell.Context).Screen;
        screen = down.Press(screen, shell.Context).Screen;
        var end = Text(screen, shell, width, height);
        Assert.Contains(last, end, StringComparison.Ordinal);
        Assert.InRange(end.TrimEnd('\n').Split('\n').Count(l => l.Trim().Length > 0), height - 8, height);
        var up = screen.Keys.First(k => k.Strokes[0] == "up").Press(screen, shell.Context).Screen;
        Assert.NotEqual(end, Text(up, shell, width, height));
    }

    [Fact]
    public void ThePictureOfTheBoxesEndsWithTheLastBoxAndIsFull()
    {
        var shell = Ridge;
        foreach (var key in (string[])["4", "p"])
            shell.Press(key);
        var plan = Assert.IsType<CutPlanScreen>(shell.Screen);
        foreach (var cable in plan.Plans)
        {
            shell.Draw(80, 24);
            var before = shell.Draw(80, 24).ToText();
            shell.Press("end");
            shell.Press("end");
            var end = shell.Draw(80, 24).ToText();
            Assert.DoesNotContain("boxes below", end, StringComparison.Ordinal);
            if (!before.Contains("boxes below", StringComparison.Ordinal))
                Assert.Equal(before, end);
            shell.Press("right");
        }
    }

    private static string Text(IScreen screen, ShellState shell, int width, int height)
    {
        var frame = new Frame(width, height);
        screen.Draw(frame.All, shell.Context, null);
        return frame.ToText();
    }
}

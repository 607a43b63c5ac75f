using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>At the end of a hold the bell rings once, and the digits flash for whoever does not hear it.</summary>
public class HoldBellTests
{
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    private ShellState Holding()
    {
        var shell = new ShellState(new TestDesk(_clock), new TestJob().Window("W01").SayOf("Roller", CoveringKindFacts.PairHold, "9").Scribe);
        foreach (var key in (string[])["2", "]", "]", "]", "]", "]", "]", "]", "]", "h"])
            shell.Press(key);
        Assert.Contains("keep holding", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
        return shell;
    }

    private bool RingsAfter(ShellState shell, double seconds)
    {
        _clock.Advance(TimeSpan.FromSeconds(seconds));
        shell.Tick();
        return shell.TakeRing();
    }

    [Fact]
    public void TheBellRingsOnceAndNotBefore()
    {
        var shell = Holding();
        Assert.False(RingsAfter(shell, 8.8));
        Assert.True(RingsAfter(shell, 0.2));
        Assert.False(RingsAfter(shell, 0.2));
        Assert.False(RingsAfter(shell, 20));
    }

    [Fact]
    public void ItRingsAlsoWhenTheClockWasLate() => Assert.True(RingsAfter(Holding(), 30));

    [Fact]
    public void AHoldThatWasStoppedRingsNot()
    {
        var shell = Holding();
        _clock.Advance(TimeSpan.FromSeconds(3));
        shell.Press("h");
        Assert.False(RingsAfter(shell, 30));
    }

    [Fact]
    public void TheDigitsFlashForAFewSecondsAndThenStandStill()
    {
        var shell = Holding();
        var flashes = new List<bool>();
        _clock.Advance(TimeSpan.FromSeconds(9));
        for (var beat = 0; beat < 30; beat++)
        {
            shell.Tick();
            flashes.Add(IsFlashing(shell));
            _clock.Advance(TimeSpan.FromMilliseconds(200));
        }
        Assert.Contains(true, flashes.Take(15));
        Assert.Contains(false, flashes.Take(15));
        Assert.DoesNotContain(true, flashes.Skip(15));
        Assert.Contains("Let go.", shell.Draw(80, 24).ToText(), StringComparison.Ordinal);
    }

    private static bool IsFlashing(ShellState shell)
    {
        var frame = shell.Draw(80, 24);
        var y = frame.ToText().Split('\n').ToList().FindIndex(l => l.Contains("Let go.", StringComparison.Ordinal));
        return frame.Row(y).ToArray().Any(c => c is { Text: "L", Tone: Tone.Selected });
    }
}

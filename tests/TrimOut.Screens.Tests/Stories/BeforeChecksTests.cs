using Microsoft.Extensions.Time.Testing;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>A house is shown before its checks are done, and nothing of it looks well or wrong until they are.</summary>
public sealed class BeforeChecksTests
{
    [Theory]
    [InlineData("ridge-house")]
    [InlineData(null)]
    public void UnitsAreShownWithoutAMarkACountOrAColorThatJudgesThem(string? sample)
    {
        var scribe = sample is null ? new TestJob().Window("W01").Window("W02").Scribe : SampleHouse.Open(sample, new FakeTimeProvider());
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), scribe);
        foreach (var (width, height) in new[] { (80, 24), (140, 40) })
        {
            var frame = shell.DrawBeforeChecks(width, height)!;
            var text = frame.ToText();
            Assert.Contains("checking ...", text);
            Assert.Contains("Nothing here is judged yet.", text);
            Assert.Contains(shell.Context.House.Units[0].Tag, text);
            var tones = Enumerable.Range(0, height).SelectMany(y => frame.Row(y).ToArray()).Select(c => c.Tone).ToHashSet();
            Assert.Subset(new HashSet<Tone> { Tone.Text, Tone.Bar, Tone.Key, Tone.Strong, Tone.Heading }, tones);
            Assert.False(shell.Context.IsChecked);
        }
        shell.Context.GetReady();
        Assert.Null(shell.DrawBeforeChecks(80, 24));
        Assert.DoesNotContain("checking", shell.Draw(80, 24).ToText());
    }

    [Fact]
    public void TheSheetFollowsByItselfAndAKeyWaitsForIt()
    {
        using var user = new TerminalUser(new TestDesk(new FakeTimeProvider()), SampleHouse.Open("ridge-house", new FakeTimeProvider()));
        Assert.Contains("checking ...", user.FirstSight);
        Assert.DoesNotContain("checking ...", user.Screen);
        user.Sees("Living room");
        var first = new ShellState(new TestDesk(new FakeTimeProvider()), SampleHouse.Open("ridge-house", new FakeTimeProvider()));
        Assert.True(first.LooksBeforeChecks());
        first.Press("down");
        first.Context.GetReady();
        Assert.False(first.LooksBeforeChecks());
    }

    [Fact]
    public void AChangeOfTheHouseShowsTheSheetAtOnce()
    {
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), SampleHouse.Open("ridge-house", new FakeTimeProvider()));
        shell.Context.GetReady();
        shell.Press("space");
        shell.Tick();
        Assert.False(shell.LooksBeforeChecks());
    }

    [Fact]
    public void ChecksTakeNoThreadThatTheLibraryWaitsFor()
    {
        var context = new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe).Context;
        Assert.True(context.GetReadyBeside() is { } work && work.CreationOptions.HasFlag(TaskCreationOptions.LongRunning));
    }
}

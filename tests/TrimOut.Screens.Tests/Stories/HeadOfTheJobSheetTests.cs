using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Phases;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>The job sheet's head tells the state of the house in one line, and each phase has one name.</summary>
public class HeadOfTheJobSheetTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    private static string[] Lines(int width, int height, params string[] keys)
    {
        var shell = new ShellState(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock), Look.Dark);
        foreach (var key in keys)
            shell.Press(key);
        return shell.Draw(width, height).ToText().Split('\n');
    }

    /// <summary>The house, its state and its phases take a line each, and the list begins right below the heads of its columns.</summary>
    [Theory]
    [InlineData(80, 24)]
    [InlineData(100, 29)]
    public void OnALowScreenTheHeadTakesThreeLines(int width, int height)
    {
        var lines = Lines(width, height);
        Assert.Contains("Ridge house", lines[0], StringComparison.Ordinal);
        Assert.Contains("finished", lines[1], StringComparison.Ordinal);
        var context = new ShellState(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock)).Context;
        var at = 0;
        foreach (var phase in PhaseNames.All)
        {
            var stops = context.Report.StopsIn(phase);
            var seen = $"{(int)phase + 1}{(stops == 0 ? "" : $"!{stops}")} ";
            at = lines[2].IndexOf(seen, at, StringComparison.Ordinal);
            Assert.True(at > 0, $"{seen} is not in {lines[2]}");
        }
        Assert.StartsWith(" Unit Kind", lines[3], StringComparison.Ordinal);
        Assert.Contains("12345678901", lines[3], StringComparison.Ordinal);
        Assert.StartsWith("Living room (Main)", lines[4], StringComparison.Ordinal);
        Assert.DoesNotContain("…", lines[2], StringComparison.Ordinal);
    }

    /// <summary>The phase that is worked in is named, or the one that is shown, with how far it is.</summary>
    [Fact]
    public void ThePhaseInHandIsNamedInTheOneLine()
    {
        var next = new ShellState(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock)).Context.Head.Next!.Value.Step.Phase;
        Assert.Contains($" {(int)next + 1} {next.Full()}", Lines(80, 24)[2], StringComparison.Ordinal);
        Assert.Contains(" 3 Close-in 36/72", Lines(80, 24, "right", "right", "right")[2], StringComparison.Ordinal);
    }

    /// <summary>Nothing is lost by that: one key shows the names and the sums, and takes them away on a high screen.</summary>
    [Fact]
    public void OneKeyUnfoldsTheHeadAndFoldsIt()
    {
        var low = string.Join('\n', Lines(80, 24, "#")[2..6]);
        Assert.All(PhaseNames.All, phase => Assert.All(phase.Full().Split('-'), part => Assert.Contains(part, low, StringComparison.Ordinal)));
        Assert.Equal(Lines(80, 24)[..22], Lines(80, 24, "#", "#")[..22]);
        Assert.StartsWith(" Unit Kind", Lines(140, 40, "#")[3], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(140, 40)]
    public void OneLineTellsUnitsFinishedWhatIsNextAndWhoWaits(int width, int height)
    {
        var context = new ShellState(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock)).Context;
        var head = HouseHead.Of(context.House, context.Steps, context.Today);
        var line = Lines(width, height)[1];
        Assert.Contains($"{head.Finished} of {head.Units}", line, StringComparison.Ordinal);
        // What the top line says of the whole house is not said again below it.
        Assert.Contains($"!{context.Report.OpenStops.Count()} stop", Lines(width, height)[0], StringComparison.Ordinal);
        Assert.DoesNotContain("stop", line, StringComparison.Ordinal);
        Assert.Single(Lines(width, height), l => l.Contains("checks wait", StringComparison.Ordinal));
        Assert.Contains($"Next: {head.Next!.Value.Step.Label}", line, StringComparison.Ordinal);
        Assert.All(head.Waiting, w => Assert.Contains($"{w.Units} ", line[line.IndexOf("Next", StringComparison.Ordinal)..], StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(100, 30)]
    [InlineData(140, 40)]
    public void EachPhaseHasItsNameInFullAndNoOther(int width, int height)
    {
        var head = string.Join('\n', Lines(width, height, height < 30 ? ["#"] : [])[2..6]);
        Assert.All(PhaseNames.All, phase => Assert.All(phase.Full().Split('-'), part => Assert.Contains(part, head, StringComparison.Ordinal)));
        Assert.DoesNotContain("…", head, StringComparison.Ordinal);
    }

    [Fact]
    public void TheMarksAreReadWithTheirWordsWhereThereIsRoom() =>
        Assert.Contains("■ done  ◧ begun  · not yet  ! stop", string.Join('\n', Lines(140, 60)), StringComparison.Ordinal);

    [Fact]
    public void ACountThatHasNoRoomLeavesItsSign()
    {
        for (var width = ShellState.MinimumWidth; width < 140; width++)
        {
            var numbers = Lines(width, 24, "#")[2];
            Assert.All(numbers.Split(' ', StringSplitOptions.RemoveEmptyEntries), part => Assert.Matches("^(\\d{1,2}|!\\d*)$", part));
        }
    }
}

using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Phases;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>The job sheet's head tells the state of the house in one line, and each phase has one name.</summary>
public class HeadOfTheJobSheetTests
{
    private static readonly FakeTimeProvider Clock = new(new DateTimeOffset(2026, 6, 8, 14, 5, 0, TimeSpan.Zero));

    private static string[] Lines(int width, int height) =>
        new ShellState(new TestDesk(Clock), SampleHouse.Open("ridge-house", Clock), Look.Dark).Draw(width, height).ToText().Split('\n');

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
        Assert.Single(Lines(width, height), l => l.Contains("(m)", StringComparison.Ordinal));
        Assert.Contains($"Next: {head.Next!.Value.Step.Label}", line, StringComparison.Ordinal);
        Assert.All(head.Waiting, w => Assert.Contains($"{w.Units} ", line[line.IndexOf("Next", StringComparison.Ordinal)..], StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(100, 30)]
    [InlineData(140, 40)]
    public void EachPhaseHasItsNameInFullAndNoOther(int width, int height)
    {
        var head = string.Join('\n', Lines(width, height)[2..6]);
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
            var numbers = Lines(width, 24)[2];
            Assert.All(numbers.Split(' ', StringSplitOptions.RemoveEmptyEntries), part => Assert.Matches("^(\\d{1,2}|!\\d*)$", part));
        }
    }
}

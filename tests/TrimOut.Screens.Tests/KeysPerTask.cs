using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

/// <summary>The work on one unit, done by keys alone: how many it takes besides what is typed as data, beside what it took once.</summary>
/// <param name="Name">The task.</param>
/// <param name="Were">The keys that it took when somebody first counted them.</param>
/// <param name="Keys">The keys that it takes.</param>
internal sealed record KeysPerTask(string Name, int Were, int Keys)
{
    private static readonly Dictionary<Fact, string> Answers = new()
    {
        [RunFacts.Cable] = "16/2",
        [RunFacts.MainsDistance] = "12",
        [RunFacts.MainsSheathed] = "yes",
        [RunFacts.HoleEdge] = "1 1/2",
        [RunFacts.HoleTo] = "side",
        [RunFacts.NailPlates] = "yes",
        [RunFacts.TailAtWindow] = "36",
        [RunFacts.TailAtPanel] = "36",
        [RunFacts.OnePiece] = "yes",
        [RunFacts.Photo] = "photos/W01.jpg",
        [RunFacts.SpareCables] = "0",
        [RunFacts.FirstLoop] = "0.5",
        [RunFacts.FirstApart] = "open",
        [RunFacts.FirstToFrame] = "open",
        [LegFacts.AirMoves] = "no",
        [LegFacts.FireBarrier] = "no",
        [WindowFacts.WidthTop] = "35 1/2",
        [WindowFacts.WidthMiddle] = "35 1/2",
        [WindowFacts.WidthBottom] = "35 1/2",
        [WindowFacts.HeightLeft] = "60",
        [WindowFacts.HeightMiddle] = "60",
        [WindowFacts.HeightRight] = "60",
        [WindowFacts.DiagonalDown] = "69 3/4",
        [WindowFacts.DiagonalUp] = "69 3/4",
        [WindowFacts.Depth] = "5",
        [WindowFacts.WidthAgain] = "35 1/2",
        [WindowFacts.HeightAgain] = "60",
        [WindowFacts.InTheWay] = "none",
    };

    public static IReadOnlyList<KeysPerTask> All { get; } = [Entry(), Run(), Walk("All else that rough-in asks of a unit", 51, Phase.RoughIn),
        Walk("The full measure of an opening, both times", 84, Phase.Measure), Step()];

    private static ShellState At(TestJob job) => new(new TestDesk(new FakeTimeProvider()), job.Scribe);

    private static KeysPerTask Entry()
    {
        var (shell, keys) = (At(new TestJob()), 0);
        Press(shell, "n", ref keys);
        shell.TextChanged("W01 roller left 35 3/8 x 60 SW floor inside panel @Kitchen");
        Press(shell, "enter", ref keys);
        Assert.NotNull(shell.Context.House.FindTag("W01")!.Room);
        return new("A window with its unit: kind, side, size, facing, reach, mount, power, room", 13, keys);
    }

    private static KeysPerTask Run()
    {
        var (shell, keys) = (At(new TestJob().Window("W01")), 0);
        shell.Press("4");
        Press(shell, "l", ref keys);
        shell.TextChanged("up 8, across 46 in wall, down 3");
        Press(shell, "enter", ref keys);
        Assert.Equal(3, shell.Context.House.Runs[0].Legs.Length);
        return new("A home run of three legs", 35, keys);
    }

    private static KeysPerTask Step()
    {
        var (shell, keys) = (At(new TestJob().Window("W01").Pulled("W01")), 0);
        foreach (var key in (string[])["2", "]", "]"])
            shell.Press(key);
        Press(shell, "x", ref keys);
        Assert.NotNull(shell.Context.House.Units[0].MarkOf(StepList.Find("cable-found")!));
        return new("One step on a unit", 1, keys);
    }

    /// <summary>Walks a phase of one unit, with everything that its steps ask for.</summary>
    private static KeysPerTask Walk(string name, int were, Phase phase)
    {
        var job = new TestJob().Window("W01").Say("W01", UnitFacts.LeadSide, "left").Say("W01", UnitFacts.Power, "panel");
        foreach (var step in StepList.Of(Phase.WalkThrough, job.Unit("W01")).ToList())
            job.Do(MarkStep.NotNeeded(job.Unit("W01"), step, "walked with the architect"));
        job.Do(QuickLegs.Add(job.Run("W01"), "up 8, across 46 in wall, down 3, in wall"));
        var (shell, keys) = (At(job), 0);
        shell.Press("2");
        while (((TrimOut.Screens.Walk.WalkScreen)shell.Screen).Phase < phase)
            shell.Press("]");
        while (((TrimOut.Screens.Walk.WalkScreen)shell.Screen).Phase > phase)
            shell.Press("[");
        shell.Press("home");
        while (!Progress.Of(shell.Context.House.Units[0], phase).Complete)
        {
            Assert.True(keys < 200, shell.Draw(80, 24).ToText());
            Press(shell, "space", ref keys);
            while (shell.Typing is { } typing)
            {
                if (typing.Text.Length == 0)
                    shell.TextChanged(Answer(shell.Context.House, typing.Entry.InPlace!));
                Press(shell, "enter", ref keys);
                Assert.True(shell.Typing?.Refused is null, shell.Draw(80, 24).ToText());
            }
        }
        return new(name, were, keys);
    }

    private static string Answer(House house, string place)
    {
        var slash = place.IndexOf('/', StringComparison.Ordinal);
        return Answers[FactTable.Find(house.Find(place[..slash])!.Kind, place[(slash + 1)..])!];
    }

    private static void Press(ShellState shell, string key, ref int keys)
    {
        shell.Press(key);
        keys++;
    }
}

public class KeysPerTaskTests
{
    [Fact]
    public void NoTaskTakesMoreKeysThanItDid() => Assert.All(KeysPerTask.All, task => Assert.InRange(task.Keys, 1, task.Were));

    [Fact]
    public void ARunOfThreeLegsTakesAtMostTwelve() => Assert.InRange(KeysPerTask.All.Single(t => t.Were == 35).Keys, 1, 12);
}

using TrimOut.Core.Facts;
using TrimOut.Core.Figures;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Houses;

public class BegunWithTests
{
    [Fact]
    public void AFigureThatTheProgramBeganWithIsOneUntilSomebodyTypesIt()
    {
        var job = new TestJob();
        Assert.All(BegunWith.Facts, f => Assert.True(BegunWith.Is(job.House.Job, f), f.Label));
        Assert.False(BegunWith.Is(job.House.Job, HouseFacts.Name));
        // The same figure, typed, is somebody's own.
        job.SayOf("", HouseFacts.CableAllowance, "10");
        Assert.False(BegunWith.Is(job.House.Job, HouseFacts.CableAllowance));
        Assert.True(BegunWith.Is(job.House.Job, HouseFacts.PanelTail));
    }

    [Fact]
    public void TheFiguresOfARunSayWhichOfThemNobodyTyped()
    {
        var job = Jobs.Roughed().Say("W01", RunFacts.TailAtPanel, "");
        Assert.Equal(["10 % (what the program began with)", "72\" (what the program began with)"], Inputs(job));
        job.SayOf("", HouseFacts.CableAllowance, "12").SayOf("", HouseFacts.PanelTail, "60");
        Assert.Equal(["12 %", "60\""], Inputs(job));
    }

    private static IEnumerable<string> Inputs(TestJob job) => UnitFigures.Of(job.Unit("W01")).Single(f => f.Name == "Cable off a box").Working.Inputs
        .Where(i => i.Name is "allowance" or "tail at panel").Select(i => i.Value);
}

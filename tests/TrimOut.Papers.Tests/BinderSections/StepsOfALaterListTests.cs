using TrimOut.Core.Decisions;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Papers.Tests.BinderSections;

/// <summary>The binder counts the steps that a house is asked for by the list that the work is done by.</summary>
public class StepsOfALaterListTests
{
    [Fact]
    public void AStepThatCameLaterIsCountedWhereItIsAskedOrMarkedAndWhoMarkedItIsTold()
    {
        var old = new TestJob(steps: LaterSteps.First).Window("W01").Window("W02");
        foreach (var step in LaterSteps.First.Asked(Phase.Hang, old.Unit("W01")).ToList())
            old.Do(MarkStep.Done(old.Unit("W01"), step));
        var job = new TestJob(store: new MemoryStore("laptop", old.Scribe.Log.Changes), steps: LaterSteps.Second);
        var (done, all) = Hang(job);
        Assert.Equal(LaterSteps.Second.Asked(Phase.Hang, job.Unit("W01")).Count() + LaterSteps.Second.Asked(Phase.Hang, job.Unit("W02")).Count(), all);
        Assert.Equal(done, Marked(job));
        job.Do(MarkStep.Done(job.Unit("W01"), LaterSteps.Levelled));
        Assert.Equal((done + 1, all + 1), Hang(job));
        Assert.Equal(done + 1, Marked(job));
        job.Do(MarkStep.Done(job.Unit("W02"), LaterSteps.Levelled));
        Assert.Equal((done + 2, all + 1), Hang(job));
        Assert.Equal(done + 2, Marked(job));
    }

    private static (int Done, int All) Hang(TestJob job)
    {
        var row = Row(job, "How far each phase is");
        return (Number(row[1]), Number(row[2]));
    }

    private static int Marked(TestJob job) => Number(Row(job, "By phase and person")[2]);

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static List<string> Row(TestJob job, string heading) => Binder.Paper
        .Page(FinishedHouse.Data(job.Scribe.Log) with { Steps = LaterSteps.Second }).TableUnder(heading).Single(r => r[0] == Phase.Hang.Full());
}

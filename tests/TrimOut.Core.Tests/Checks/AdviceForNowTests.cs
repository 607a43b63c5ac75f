using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>What a mend says is what can still be done.</summary>
public class AdviceForNowTests
{
    private static readonly string[] TooLate =
    [
        "wall is open", "before the wall closes", "before the drywall", "before anything is ordered", "before it is ordered", "before it is cut",
        "until it is cut", "before they are cut", "before anything is cut", "before it is hung", "before the house is finished",
    ];

    /// <summary>Of a cable whose own unit hangs, the house around it may still be unfinished.</summary>
    private static readonly string[] WhileTheHouseIsNotFinished = ["loop-open-or-shorted", "conductors-not-apart", "conductor-touches-building"];

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Info.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void InAHouseWhereAllHangsNoMendSpeaksOfBefore(string id)
    {
        var check = AllChecks.Find(id)!;
        var (job, _, _) = Example.Finding(check).Play();
        if (job.House.Units.IsEmpty)
            Jobs.Walked("W99", job);
        foreach (var unit in job.House.Units.Select(u => u.Id).ToList())
        {
            if (job.House.FindUnit(unit)!.Item.Get(UnitFacts.OrderedOn) is null)
                job.Do(j => SetFact.Typed(j.House, j.House.Find(unit)!, UnitFacts.OrderedOn, "2026-03-02"));
            foreach (var phase in new[] { Phase.CloseIn, Phase.Hang, Phase.Handover })
            {
                if (StepList.Of(phase, job.House.FindUnit(unit)!).FirstOrDefault() is { } step)
                    job.Do(j => MarkStep.Done(j.House.FindUnit(unit)!, step));
            }
        }
        var late = WhileTheHouseIsNotFinished.Contains(id) ? TooLate.Except(["before the house is finished"]) : TooLate;
        foreach (var found in check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>())
            Assert.All(late, words => Assert.DoesNotContain(words, found.Mend.In(job.House), StringComparison.Ordinal));
    }
}

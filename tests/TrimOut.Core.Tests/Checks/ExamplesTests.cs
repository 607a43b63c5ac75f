using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Checks.Copies;

namespace TrimOut.Core.Tests.Checks;

public class ExamplesTests
{
    /// <summary>Rules that say nothing of a house in which they find nothing.</summary>
    private static readonly Type[] SilentWhenFine = [typeof(ListedByRelaxation), typeof(ValuesDisagree), typeof(RemovedWhileWorkedOn)];

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Info.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void TheExampleThatFindsHasAFindingAndSaysWhatWasDone(string id)
    {
        var check = AllChecks.Find(id)!;
        var (job, _, done) = Example.Finding(check).Play();
        var found = check.Run(job.House).Select(r => r.Outcome).OfType<Outcome.Found>().ToList();
        Assert.NotEmpty(found);
        Assert.NotEmpty(done);
        Assert.All(found, f => Assert.All((string[])[f.Message.In(job.House), f.Mend.In(job.House)], words => Assert.Matches(@"^[^{}]+[.]$", words)));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void TheExampleThatPassesHasNoFindingAndAPass(string id)
    {
        var check = AllChecks.Find(id)!;
        var (job, _, done) = Example.Passing(check).Play();
        var outcomes = check.Run(job.House).Select(r => r.Outcome).ToList();
        Assert.Empty(outcomes.OfType<Outcome.Found>());
        Assert.NotEmpty(done);
        if (SilentWhenFine.Contains(check.GetType()))
            Assert.Empty(outcomes);
        else
            Assert.NotEmpty(outcomes.OfType<Outcome.Fine>());
    }
}

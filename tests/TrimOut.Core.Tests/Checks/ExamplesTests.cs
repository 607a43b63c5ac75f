using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Cables;
using TrimOut.Core.Checks.Copies;

namespace TrimOut.Core.Tests.Checks;

public class ExamplesTests
{
    /// <summary>Rules that say nothing of a house in which they find nothing.</summary>
    private static readonly Type[] SilentWhenFine = [typeof(ListedByRelaxation), typeof(ValuesDisagree), typeof(RemovedWhileWorkedOn)];

    public static TheoryData<string> Ids => [.. AllChecks.All.Where(c => Of(c, "Finds") is not null).Select(c => c.Info.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void TheExampleThatFindsHasAFindingAndSaysWhatWasDone(string id)
    {
        var check = AllChecks.Find(id)!;
        var (job, done) = Of(check, "Finds")!.Play();
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
        var (job, done) = Of(check, "Passes")!.Play();
        var outcomes = check.Run(job.House).Select(r => r.Outcome).ToList();
        Assert.Empty(outcomes.OfType<Outcome.Found>());
        Assert.NotEmpty(done);
        if (SilentWhenFine.Contains(check.GetType()))
            Assert.Empty(outcomes);
        else
            Assert.NotEmpty(outcomes.OfType<Outcome.Fine>());
    }

    /// <summary>One of the two examples in the test class of a check.</summary>
    private static Example? Of(ICheck check, string which) =>
        typeof(ExamplesTests).Assembly.GetType(check.GetType().FullName!.Replace("TrimOut.Core.", "TrimOut.Core.Tests.", StringComparison.Ordinal) + "Tests")
            ?.GetProperty(which)?.GetValue(null) as Example;
}

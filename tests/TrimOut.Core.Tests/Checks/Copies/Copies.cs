using TrimOut.Core.History;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks.Copies;

/// <summary>One house on two laptops that are worked on apart and then merged.</summary>
internal static class Copies
{
    /// <summary>The house with what was done on either laptop, neither having seen the other's.</summary>
    public static TestJob Merged(TestJob job, Func<TestJob, TestJob> onOne, Func<TestJob, TestJob> onOther)
    {
        TestJob Copy(string device) => new(store: new MemoryStore(device, job.Scribe.Log.Changes));
        var merge = Merge.Of(onOne(Copy("one")).Scribe.Log, onOther(Copy("other")).Scribe.Log).Value;
        return new TestJob(store: new MemoryStore("office", merge.Merged.Changes));
    }
}

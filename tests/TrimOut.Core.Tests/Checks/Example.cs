using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>A house on which a check finds something, or on which it passes: run as a test, and told on the check's page.</summary>
/// <param name="Begin">The house to begin with, one of <see cref="Jobs"/>.</param>
/// <param name="Then">What is said or done in it, which is what the page tells.</param>
public sealed record Example(Func<TestJob> Begin, Func<TestJob, TestJob> Then)
{
    /// <summary>An example whose house is as it begins.</summary>
    public static Example As(Func<TestJob> begin) => new(begin, job => job);

    /// <summary>The house, and what was done in it, in the words of its history.</summary>
    public (TestJob Job, IReadOnlyList<string> Done) Play()
    {
        var job = Begin();
        var before = job.Scribe.Log.Changes.Count;
        var after = Then(job);
        return (after, [.. after.Scribe.Log.Changes.Skip(before).Select(c => c.What)]);
    }
}

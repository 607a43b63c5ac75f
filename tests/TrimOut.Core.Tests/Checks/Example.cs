using TrimOut.Core.Checks;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>A house on which a check finds something, or on which it passes: run as a test, and told on the check's page.</summary>
/// <param name="Begin">The house to begin with, one of <see cref="Jobs"/>.</param>
/// <param name="Then">What is said or done in it, which is what the page tells.</param>
public sealed record Example(Func<TestJob> Begin, Func<TestJob, TestJob> Then)
{
    /// <summary>An example whose house is as it begins.</summary>
    public static Example As(Func<TestJob> begin) => new(begin, job => job);

    /// <summary>The example that finds something, in the test class of a check.</summary>
    public static Example Finding(ICheck check) => Of(check, "Finds");

    /// <summary>The example that passes, in the test class of a check.</summary>
    public static Example Passing(ICheck check) => Of(check, "Passes");

    /// <summary>The house; how it began and what was done in it, in the words of its history.</summary>
    public (TestJob Job, IReadOnlyList<string> Begun, IReadOnlyList<string> Done) Play()
    {
        var job = Begin();
        var begun = job.Scribe.Log.Changes.Count;
        var after = Then(job);
        return (after, [.. after.Scribe.Log.Changes.Take(begun).Select(c => c.What)], [.. after.Scribe.Log.Changes.Skip(begun).Select(c => c.What)]);
    }

    private static Example Of(ICheck check, string which)
    {
        var tests = check.GetType().FullName!.Replace("TrimOut.Core.", "TrimOut.Core.Tests.", StringComparison.Ordinal) + "Tests";
        return typeof(Example).Assembly.GetType(tests)?.GetProperty(which)?.GetValue(null) as Example
            ?? throw new InvalidOperationException($"{tests} has no public static Example {which}.");
    }
}

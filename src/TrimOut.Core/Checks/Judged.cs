using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>What one judgement came to.</summary>
/// <param name="Results">What was found or could not be checked, without its working: that is made again for whoever asks.</param>
/// <param name="Passed">How often the rule holds.</param>
internal sealed record Judged(IReadOnlyList<CheckResult> Results, int Passed)
{
    private static readonly Judged Nothing = new([], 0);
    private static readonly Judged Fine = new([], 1);

    /// <summary>Judges, and notes what is read.</summary>
    public static Judged Of(ReadRecorder recorder, Func<IEnumerable<CheckResult>> judge, out long[] reads) => recorder.Record(() => Of(judge()), out reads);

    private static Judged Of(IEnumerable<CheckResult> results)
    {
        List<CheckResult>? said = null;
        var passed = 0;
        foreach (var result in results)
        {
            if (result.Outcome is Outcome.Fine)
                passed++;
            else if (result.Outcome is not Outcome.DoesNotApply)
                (said ??= []).Add(result.Outcome is Outcome.Found { Working: not null } found ? result with { Outcome = found with { Working = null } } : result);
        }
        return said is not null ? new Judged(said, passed) : passed switch { 0 => Nothing, 1 => Fine, _ => new Judged([], passed) };
    }
}

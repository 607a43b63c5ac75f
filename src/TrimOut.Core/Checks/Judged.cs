using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>What one judgment came to.</summary>
/// <param name="Results">What was found or could not be checked, without its working: that is made again for whoever asks.</param>
/// <param name="Passed">How often the rule holds.</param>
internal sealed record Judged(IReadOnlyList<CheckResult> Results, int Passed)
{
    private static readonly Judged Nothing = new([], 0);
    private static readonly Judged Fine = new([], 1);

    /// <summary>Keeps of the one result that there is what is needed.</summary>
    public static Judged Of(CheckInfo check, Item subject, Outcome outcome) => outcome switch
    {
        Outcome.Fine => Fine,
        Outcome.DoesNotApply => Nothing,
        _ => Of(CheckResult.Each(check, subject, outcome)),
    };

    /// <summary>Keeps of the results what is needed.</summary>
    public static Judged Of(IEnumerable<CheckResult> results)
    {
        List<CheckResult>? said = null;
        var passed = 0;
        foreach (var result in results)
        {
            if (result.Outcome is Outcome.Fine)
                passed++;
            else if (result.Outcome is not Outcome.DoesNotApply)
                (said ??= []).Add(result.Outcome is Outcome.Found { Working: not null } found ? result with { Outcome = found with { Working = null } }
                    : result);
        }
        return said is not null ? new Judged(said, passed) : passed switch { 0 => Nothing, 1 => Fine, _ => new Judged([], passed) };
    }
}

using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>What one judgment came to.</summary>
/// <param name="Found">Broken rules, without their working: that is made again for whoever asks.</param>
/// <param name="Missing">What could not be checked.</param>
/// <param name="Passed">How often the rule holds.</param>
internal sealed record Judged(ImmutableArray<CheckResult> Found, ImmutableArray<CheckResult> Missing, int Passed)
{
    private static readonly Judged Nothing = new([], [], 0);
    private static readonly Judged Fine = new([], [], 1);

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
        List<CheckResult>? found = null, missing = null;
        var passed = 0;
        foreach (var result in results)
        {
            switch (result.Outcome)
            {
                case Outcome.Found broken:
                    (found ??= []).Add(broken.Working is null ? result : result with { Outcome = broken with { Working = null } });
                    break;
                case Outcome.NotChecked:
                    (missing ??= []).Add(result);
                    break;
                case Outcome.Fine:
                    passed++;
                    break;
            }
        }
        return (found, missing, passed) switch { (null, null, 0) => Nothing, (null, null, 1) => Fine, _ => new([.. found ?? []], [.. missing ?? []], passed) };
    }
}

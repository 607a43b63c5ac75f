using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>What one check said of one house, and what it read of it, so that only what reads otherwise is judged again.</summary>
internal abstract class CheckSheet
{
    private const int FewSubjects = 32;

    private Totals? _totals;

    /// <summary>The check.</summary>
    public required ICheck Check { get; init; }

    /// <summary>Broken rules with the places of their subjects, without what was waived; what could not be checked; how often the rule holds.</summary>
    public Totals Sum => _totals ??= Totals.Of(Said);

    /// <summary>Everything that it said, in the order of its subjects.</summary>
    protected abstract IEnumerable<Judged> Said { get; }

    /// <summary>What its judgements are of: another object when there are other subjects.</summary>
    public abstract object Subjects { get; }

    /// <summary>What is judged of it by itself: each is a number from 0 to less than this.</summary>
    public abstract int Judgements { get; }

    /// <summary>What a judgement read.</summary>
    public abstract ReadOnlySpan<long> Reads(int judgement);

    /// <summary>What it says of another state of the house.</summary>
    /// <param name="house">The state.</param>
    /// <param name="changed">What reads otherwise in it.</param>
    /// <param name="touched">The judgements that read some of that.</param>
    public abstract CheckSheet After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched);

    /// <summary>What checks say of a house, in their order.</summary>
    public static ImmutableArray<CheckSheet> Of(IEnumerable<ICheck> checks, HouseState house)
    {
        var all = checks.ToList();
        var begun = all.OfType<SubjectCheck>().ToDictionary(c => c, c => new SubjectSheet.Begun(c, house));
        var most = begun.Values.Select(b => b.Count).DefaultIfEmpty().Max();
        // A few subjects at a time with every rule: what is known of them is still at hand when the next rule asks for it.
        for (var end = FewSubjects; end < most + FewSubjects; end += FewSubjects)
        {
            foreach (var sheet in begun.Values)
                sheet.JudgeUpTo(end);
        }
        return [.. all.Select(c => c is SubjectCheck subject ? begun[subject].Done() : (CheckSheet)HouseSheet.Of(c, house))];
    }

    /// <summary>What a sheet comes to.</summary>
    internal sealed record Totals(ImmutableArray<CheckResult> Findings, ImmutableArray<CheckResult> Missing, int Passed)
    {
        public static Totals Of(IEnumerable<Judged> said)
        {
            var (findings, missing, passed) = (ImmutableArray.CreateBuilder<CheckResult>(), ImmutableArray.CreateBuilder<CheckResult>(), 0);
            foreach (var judged in said)
            {
                passed += judged.Passed;
                foreach (var result in judged.Results)
                    (result.Outcome is Outcome.Found ? findings : missing).Add(result);
            }
            return new Totals(findings.DrainToImmutable(), missing.DrainToImmutable(), passed);
        }
    }
}

using System.Collections.Immutable;
using TrimOut.Core.Houses;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Checks;

/// <summary>What one check said of one house, and what it read of it, so that only what reads otherwise is judged again.</summary>
internal sealed class CheckSheet
{
    private const int FewSubjects = 32;

    private static readonly string[] TheHouse = [House.RootId];

    private readonly Mapped<Judged> _judged;
    private Totals? _totals;
    private Dictionary<string, int>? _places;

    private CheckSheet(ICheck check, Mapped<Judged> judged) => (Check, _judged) = (check, judged);

    /// <summary>The check.</summary>
    public ICheck Check { get; }

    /// <summary>What its judgments read.</summary>
    public IReadSets Reads => _judged;

    /// <summary>Broken rules and what could not be checked, in the order of the subjects, without what was waived; how often the rule holds.</summary>
    public Totals Sum => _totals ??= Totals.Of(_judged.Parts);

    /// <summary>What the judgment read that a finding comes from.</summary>
    public ReadOnlySpan<long> ReadsBehind(Finding finding)
    {
        if (Check is not SubjectCheck)
            return _judged.Reads(0);
        _places ??= _judged.Ids.Index().ToDictionary(i => i.Item, i => i.Index, StringComparer.Ordinal);
        // A run is judged under the id of its unit.
        foreach (var id in (string[])[finding.Subject.Id, finding.Subject.Under])
        {
            if (_places.TryGetValue(id, out var at) && _judged.Parts[at].Results.Any(r => r.Subject.Id == finding.Subject.Id))
                return _judged.Reads(at);
        }
        return [];
    }

    /// <summary>What checks say of a house, in their order.</summary>
    public static ImmutableArray<CheckSheet> Of(IEnumerable<ICheck> checks, HouseState house, Func<ReadKey, bool>? forgets = null)
    {
        var begun = checks.Select(c => (Check: c, Sheet: new Mapped<Judged>.Begun(Map(c) with { Forgets = forgets }, house))).ToList();
        var most = begun.Select(b => b.Sheet.Count).DefaultIfEmpty().Max();
        // A few subjects at a time with every rule: what is known of them is still at hand when the next rule asks for it.
        for (var end = FewSubjects; end < most + FewSubjects; end += FewSubjects)
        {
            foreach (var (_, sheet) in begun)
                sheet.WorkOutUpTo(end);
        }
        return [.. begun.Select(b => new CheckSheet(b.Check, b.Sheet.Done()))];
    }

    /// <summary>What it says of another state of the house.</summary>
    /// <param name="house">The state.</param>
    /// <param name="changed">What reads otherwise in it.</param>
    /// <param name="touched">The judgments that read some of that.</param>
    public CheckSheet After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched) =>
        _judged.After(house, changed, touched) is var after && ReferenceEquals(after, _judged) ? this : new CheckSheet(Check, after);

    private static Map<Judged> Map(ICheck check) => check is SubjectCheck by
        ? new(by.SubjectIds, (house, id) => by.JudgedOn(by.Find(house, id)))
        : new(_ => TheHouse, (house, _) => Judged.Of(check.Run(house)));

    /// <summary>What a sheet comes to.</summary>
    internal sealed record Totals(ImmutableArray<CheckResult> Findings, ImmutableArray<CheckResult> Missing, int Passed)
    {
        public static Totals Of(IReadOnlyList<Judged> said)
        {
            var (findings, missing, passed) = (ImmutableArray.CreateBuilder<CheckResult>(), ImmutableArray.CreateBuilder<CheckResult>(), 0);
            for (var at = 0; at < said.Count; at++)
            {
                var judged = said[at];
                passed += judged.Passed;
                for (var result = 0; result < judged.Results.Count; result++)
                    (judged.Results[result].Outcome is Outcome.Found ? findings : missing).Add(judged.Results[result]);
            }
            return new Totals(findings.DrainToImmutable(), missing.DrainToImmutable(), passed);
        }
    }
}

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
    private ImmutableArray<CheckResult> _found;
    private Dictionary<string, int>? _places;
    private NothingFound? _nothingFound;

    private CheckSheet(ICheck check, Mapped<Judged> judged) => (Check, _judged) = (check, judged);

    /// <summary>The check.</summary>
    public ICheck Check { get; }

    /// <summary>What its judgments read.</summary>
    public IReadSets Reads => _judged;

    /// <summary>Broken rules, in the order of the subjects.</summary>
    public ImmutableArray<CheckResult> Found => _found.IsDefault ? _found = All(j => j.Found) : _found;

    /// <summary>What could not be checked, in the order of the subjects.</summary>
    public ImmutableArray<CheckResult> Missing => All(j => j.Missing);

    /// <summary>How often the rule holds.</summary>
    public int Passed => _judged.Parts.Sum(j => j.Passed);

    /// <summary>What the judgment read that a finding of a subject comes from.</summary>
    public ReadOnlySpan<long> ReadsBehind(Item subject)
    {
        if (Check is not SubjectCheck)
            return _judged.Reads(0);
        _places ??= _judged.Ids.Index().ToDictionary(i => i.Item, i => i.Index, StringComparer.Ordinal);
        // A run is judged under the id of its unit.
        foreach (var id in (string[])[subject.Id, subject.Under])
        {
            if (_places.TryGetValue(id, out var at) && _judged.Parts[at].Found.Any(r => r.Subject.Id == subject.Id))
                return _judged.Reads(at);
        }
        return [];
    }

    /// <summary>
    /// The judgments that found nothing and lacked nothing, and read one of these values: each by the id of its subject, with how often the rule holds and
    /// what it read of the values.
    /// </summary>
    /// <remarks>Kept as long as the sheet and the values are the same, for an edit leaves most sheets as they are.</remarks>
    public ImmutableArray<(string Id, int Passed, ImmutableArray<long> Reads)> NothingFoundBy(IReadOnlySet<long> values)
    {
        if (_nothingFound is { } kept && kept.By.SetEquals(values))
            return kept.Said;
        var said = ImmutableArray.CreateBuilder<(string, int, ImmutableArray<long>)>();
        for (var at = 0; at < _judged.Count; at++)
        {
            if (_judged.Parts[at] is { Passed: 0 } and not { Found.IsEmpty: true, Missing.IsEmpty: true })
                continue;
            HashSet<long>? read = null;
            foreach (var key in _judged.Reads(at))
            {
                if (values.Contains(key))
                    (read ??= []).Add(key);
            }
            if (read is not null)
                said.Add((_judged.Ids[at], _judged.Parts[at].Passed, [.. read]));
        }
        return (_nothingFound = new NothingFound(values, said.DrainToImmutable())).Said;
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
    public CheckSheet After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched)
    {
        var after = _judged.After(house, changed, touched);
        return ReferenceEquals(after, _judged) ? this : new CheckSheet(Check, after);
    }

    private ImmutableArray<CheckResult> All(Func<Judged, ImmutableArray<CheckResult>> of)
    {
        var all = ImmutableArray.CreateBuilder<CheckResult>();
        foreach (var judged in _judged.Parts)
            all.AddRange(of(judged));
        return all.DrainToImmutable();
    }

    private static Map<Judged> Map(ICheck check) => check is SubjectCheck by
        ? new(by.SubjectIds, (house, id) => by.JudgedOn(by.Find(house, id)))
        : new(_ => TheHouse, (house, _) => Judged.Of(check.Run(house)));

    private sealed record NothingFound(IReadOnlySet<long> By, ImmutableArray<(string Id, int Passed, ImmutableArray<long> Reads)> Said);
}

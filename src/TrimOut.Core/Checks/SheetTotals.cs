using System.Collections.Immutable;

namespace TrimOut.Core.Checks;

/// <summary>What a sheet comes to, kept such that an edit counts again only what was judged again.</summary>
internal sealed class SheetTotals
{
    private readonly Dealt _findings;
    private readonly Dealt _missing;

    private SheetTotals(Dealt findings, Dealt missing, int passed) => (_findings, _missing, Passed) = (findings, missing, passed);

    /// <summary>Broken rules, in the order of the subjects.</summary>
    public ImmutableArray<CheckResult> Findings => _findings.Results;

    /// <summary>What could not be checked, in the order of the subjects.</summary>
    public ImmutableArray<CheckResult> Missing => _missing.Results;

    /// <summary>How often the rule holds.</summary>
    public int Passed { get; }

    /// <summary>What the judgments of all subjects come to.</summary>
    public static SheetTotals Of(IReadOnlyList<Judged> said)
    {
        var (findings, missing, passed) = (new Dealing(), new Dealing(), 0);
        for (var at = 0; at < said.Count; at++)
        {
            passed += said[at].Passed;
            findings.Add(said[at], at, found: true);
            missing.Add(said[at], at, found: false);
        }
        return new SheetTotals(findings.Done(), missing.Done(), passed);
    }

    /// <summary>What they come to when some of them are others.</summary>
    /// <param name="places">Which, in ascending order.</param>
    /// <param name="before">All judgments before.</param>
    /// <param name="said">All judgments now.</param>
    public SheetTotals With(IReadOnlyList<int> places, IReadOnlyList<Judged> before, IReadOnlyList<Judged> said) => new(
        With(_findings, places, said, found: true), With(_missing, places, said, found: false),
        Passed + places.Sum(at => said[at].Passed - before[at].Passed));

    private static Dealt With(Dealt were, IReadOnlyList<int> places, IReadOnlyList<Judged> said, bool found)
    {
        var (dealing, from) = (new Dealing(), 0);
        foreach (var at in places)
        {
            var to = were.FirstFrom(at);
            dealing.Add(were, from, to);
            dealing.Add(said[at], at, found);
            from = were.FirstFrom(at + 1);
        }
        dealing.Add(were, from, were.Results.Length);
        return dealing.Done();
    }

    /// <summary>Results of one sort, each with the place of the subject that it was said of.</summary>
    private sealed record Dealt(ImmutableArray<CheckResult> Results, ImmutableArray<int> Places)
    {
        /// <summary>The first result of this subject or of one behind it.</summary>
        public int FirstFrom(int place)
        {
            var (from, to) = (0, Places.Length);
            while (from < to)
            {
                var middle = (from + to) / 2;
                (from, to) = Places[middle] < place ? (middle + 1, to) : (from, middle);
            }
            return from;
        }
    }

    private sealed class Dealing
    {
        private readonly ImmutableArray<CheckResult>.Builder _results = ImmutableArray.CreateBuilder<CheckResult>();
        private readonly ImmutableArray<int>.Builder _places = ImmutableArray.CreateBuilder<int>();

        public void Add(Judged judged, int at, bool found)
        {
            for (var result = 0; result < judged.Results.Count; result++)
            {
                if (judged.Results[result].Outcome is Outcome.Found != found)
                    continue;
                _results.Add(judged.Results[result]);
                _places.Add(at);
            }
        }

        public void Add(Dealt were, int from, int to)
        {
            _results.AddRange(were.Results.AsSpan()[from..to]);
            _places.AddRange(were.Places.AsSpan()[from..to]);
        }

        public Dealt Done() => new(_results.DrainToImmutable(), _places.DrainToImmutable());
    }
}

using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>What one check said of one house, kept so that only what changed is judged again.</summary>
internal abstract class CheckSheet
{
    /// <summary>The check.</summary>
    public required ICheck Check { get; init; }

    /// <summary>Broken rules, without what was waived.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>What could not be checked.</summary>
    public required ImmutableArray<MissingFact> Missing { get; init; }

    /// <summary>How often the rule holds.</summary>
    public required int Passed { get; init; }

    /// <summary>What checks say of a house, in their order.</summary>
    public static ImmutableArray<CheckSheet> Of(IEnumerable<ICheck> checks, House house)
    {
        var all = checks.ToList();
        var local = all.OfType<LocalCheck>().ToDictionary(c => c, c => new LocalSheet.Begun(c, house));
        // A few units at a time with every rule: what is known of them is still at hand when the next rule asks for it.
        for (var from = 0; local.Values.Any(l => l.Goes(from)); from += LocalSheet.Begun.Few)
        {
            foreach (var begun in local.Values)
                begun.Judge(from);
        }
        return [.. all.Select(c => c switch
        {
            LocalCheck of => local[of].Done(),
            ItemCheck item => ItemSheet.From(item, house),
            _ => (CheckSheet)WideSheet.From(c, house),
        })];
    }

    /// <summary>What it says after a step, when it said this before it.</summary>
    public abstract CheckSheet After(House house, Touched touched);

    /// <summary>Sorts results into what was found, what was not checked and what is fine.</summary>
    private protected struct Sorter()
    {
        private readonly ImmutableArray<Finding>.Builder _findings = ImmutableArray.CreateBuilder<Finding>();
        private readonly ImmutableArray<MissingFact>.Builder _missing = ImmutableArray.CreateBuilder<MissingFact>();
        private int _passed;

        public void Add(CheckResult result)
        {
            switch (result.Outcome)
            {
                case Outcome.Found fault:
                    _findings.Add(new Finding(result.Check, result.Subject, fault, null));
                    break;
                case Outcome.NotChecked unknown:
                    _missing.Add(new MissingFact(result.Check, result.Subject, unknown));
                    break;
                default:
                    _passed++;
                    break;
            }
        }

        public readonly (ImmutableArray<Finding> Findings, ImmutableArray<MissingFact> Missing, int Passed) Done() => (_findings.ToImmutable(), _missing.ToImmutable(), _passed);
    }

    private protected static (ImmutableArray<Finding> Findings, ImmutableArray<MissingFact> Missing, int Passed) Sort(IEnumerable<CheckResult> results)
    {
        var sorter = new Sorter();
        foreach (var result in results)
            sorter.Add(result);
        return sorter.Done();
    }

    private sealed class LocalSheet(LocalCheck check, ImmutableArray<CheckResult>[] results, Lazy<Dictionary<string, int>> places) : CheckSheet
    {
        /// <summary>A sheet that is filled in a few subjects at a time.</summary>
        public sealed class Begun(LocalCheck check, House house)
        {
            public const int Few = 32;

            private readonly Subject[] _subjects = [.. check.SubjectsOf(house)];
            private ImmutableArray<CheckResult>[]? _results;

            public bool Goes(int from) => from < _subjects.Length;

            public void Judge(int from)
            {
                _results ??= new ImmutableArray<CheckResult>[_subjects.Length];
                for (var at = from; at < Math.Min(from + Few, _subjects.Length); at++)
                    _results[at] = check.RunOn(_subjects[at]);
            }

            public LocalSheet Done() => From(check, _results ?? [], new(() => _subjects.Select((s, at) => (s.Id, at)).ToDictionary(p => p.Id, p => p.at)));
        }

        public override CheckSheet After(House house, Touched touched)
        {
            ImmutableArray<CheckResult>[]? changed = null;
            foreach (var subject in touched.Subjects)
            {
                if (places.Value.TryGetValue(subject.Id, out var at))
                    (changed ??= [.. results])[at] = check.RunOn(subject);
            }
            return changed is null ? this : From(check, changed, places);
        }

        private static LocalSheet From(LocalCheck check, ImmutableArray<CheckResult>[] results, Lazy<Dictionary<string, int>> places)
        {
            var sorter = new Sorter();
            foreach (var ofSubject in results)
            {
                foreach (var result in ofSubject)
                    sorter.Add(result);
            }
            var (findings, missing, passed) = sorter.Done();
            return new LocalSheet(check, results, places) { Check = check, Findings = findings, Missing = missing, Passed = passed };
        }
    }

    /// <summary>Results by the place of their item; most items have none.</summary>
    private sealed class ItemSheet(ItemCheck check, ImmutableSortedDictionary<int, ImmutableArray<CheckResult>> results) : CheckSheet
    {
        public static ItemSheet From(ItemCheck check, House house) => From(check, check.Run(house).GroupBy(r => r.Subject.Place).ToImmutableSortedDictionary(g => g.Key, g => g.ToImmutableArray()));

        public override CheckSheet After(House house, Touched touched)
        {
            // A name that changed may stand in any result.
            if (touched.Facts.Any(f => f.Name is "name" or "tag"))
                return From(check, house);
            var after = results;
            foreach (var item in touched.Items.Select(house.Find).OfType<Item>())
            {
                ImmutableArray<CheckResult> now = house.IsPresent(item) ? [.. check.RunOn(house, item)] : [];
                after = now.IsEmpty ? after.Remove(item.Place) : after.SetItem(item.Place, now);
            }
            return ReferenceEquals(after, results) ? this : From(check, after);
        }

        private static ItemSheet From(ItemCheck check, ImmutableSortedDictionary<int, ImmutableArray<CheckResult>> results)
        {
            var (findings, missing, passed) = Sort(results.Values.SelectMany(r => r));
            return new ItemSheet(check, results) { Check = check, Findings = findings, Missing = missing, Passed = passed };
        }
    }

    private sealed class WideSheet(ICheck check) : CheckSheet
    {
        public static WideSheet From(ICheck check, House house)
        {
            var (findings, missing, passed) = Sort(check.Run(house));
            return new WideSheet(check) { Check = check, Findings = findings, Missing = missing, Passed = passed };
        }

        public override CheckSheet After(House house, Touched touched) =>
            check is not WideCheck wide || wide.Watches.Any(touched.Facts.Contains) ? From(check, house)
            : Findings.Any(f => touched.Items.Contains(f.Subject.Id)) || Missing.Any(m => touched.Items.Contains(m.Subject.Id)) ? new WideSheet(check)
            {
                Check = check,
                Findings = [.. Findings.Select(f => touched.Items.Contains(f.Subject.Id) ? f with { Subject = house.Find(f.Subject.Id)! } : f)],
                Missing = [.. Missing.Select(m => touched.Items.Contains(m.Subject.Id) ? m with { Subject = house.Find(m.Subject.Id)! } : m)],
                Passed = Passed,
            }
            : this;
    }
}

using System.Collections.Immutable;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>What all checks say of a house.</summary>
public sealed class CheckReport
{
    private readonly Lazy<ILookup<string, Finding>> _byUnit;

    private CheckReport(House house, ImmutableArray<Finding> findings, ImmutableArray<MissingFact> missing, int passed)
    {
        House = house;
        Findings = findings;
        Missing = missing;
        Passed = passed;
        _byUnit = new(() => Findings.ToLookup(f => OwnerOf(f.Subject)));
    }

    /// <summary>The house that was checked.</summary>
    public House House { get; }

    /// <summary>Broken rules: stops first, then cautions and notes; within these by phase and in walking order.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>What could not be checked yet.</summary>
    public ImmutableArray<MissingFact> Missing { get; }

    /// <summary>How many rules hold.</summary>
    public int Passed { get; }

    /// <summary>Stops that are neither mended nor waived.</summary>
    public IEnumerable<Finding> OpenStops => Findings.Where(f => f is { Open: true, Check.Severity: Severity.Stop });

    /// <summary>Holds every check against a house.</summary>
    public static CheckReport Of(House house) => Of(house, AllChecks.All);

    /// <summary>Holds only these checks against a house.</summary>
    public static CheckReport Of(House house, IEnumerable<ICheck> checks)
    {
        var found = new List<Finding>();
        var missing = ImmutableArray.CreateBuilder<MissingFact>();
        var passed = 0;
        foreach (var result in checks.SelectMany(c => c.Run(house)))
        {
            switch (result.Outcome)
            {
                case Outcome.Found fault:
                    found.Add(new Finding(result.Check, result.Subject, fault, WaiverFor(house, result, fault)));
                    break;
                case Outcome.NotChecked unknown:
                    missing.Add(new MissingFact(result.Check, result.Subject, unknown));
                    break;
                default:
                    passed++;
                    break;
            }
        }
        return new CheckReport(house, [.. found.OrderBy(f => f.Check.Severity).ThenBy(f => f.Check.Phase)], missing.ToImmutable(), passed);
    }

    /// <summary>Findings about a unit: its own, its home run's and its window's.</summary>
    public IEnumerable<Finding> About(Unit unit) => _byUnit.Value[unit.Id].Concat(_byUnit.Value[unit.Window.Id]);

    /// <summary>Findings about one item itself.</summary>
    public IEnumerable<Finding> About(Item item) => Findings.Where(f => f.Subject.Id == item.Id);

    /// <summary>Open stops of one phase.</summary>
    public int StopsIn(Phase phase) => OpenStops.Count(f => f.Check.Phase == phase);

    private static Waiver? WaiverFor(House house, CheckResult result, Outcome.Found fault) =>
        house.Waivers.LastOrDefault(w => w.About == result.Subject.Id && w.Check == result.Check.Id && w.Figures == fault.Message);

    private string OwnerOf(Item item) =>
        item.Kind is ItemKind.Run or ItemKind.Leg && House.Find(item.Under) is { } above ? OwnerOf(above) : item.Id;
}

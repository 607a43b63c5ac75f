using System.Collections.Immutable;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Checks;

/// <summary>What all checks say of a house.</summary>
public sealed class CheckReport
{
    private readonly ImmutableArray<CheckSheet> _sheets;
    private readonly Lazy<ILookup<string, Finding>> _byUnit;

    private CheckReport(House house, ImmutableArray<CheckSheet> sheets)
    {
        House = house;
        _sheets = sheets;
        Findings = InOrder(sheets, house);
        Missing = [.. sheets.SelectMany(s => s.Missing)];
        Passed = sheets.Sum(s => s.Passed);
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
    public static CheckReport Of(House house, IEnumerable<ICheck> checks) => new(house, CheckSheet.Of(checks, house));

    /// <summary>Holds the same checks against another house. What comes one change after the house of this report is judged only where it changed; the result is the same as from the beginning.</summary>
    public CheckReport After(House house) =>
        ReferenceEquals(house.Items, House.Items) ? this
        : house.Step is { } step && ReferenceEquals(step.Before, House.Items) && Touched.By(step, house) is { } touched
            ? new CheckReport(house, [.. _sheets.Select(s => s.After(house, touched))])
            : Of(house, _sheets.Select(s => s.Check));

    /// <summary>Findings about a unit: its own, its home run's and its window's.</summary>
    public IEnumerable<Finding> About(Unit unit) => _byUnit.Value[unit.Id].Concat(_byUnit.Value[unit.Window.Id]);

    /// <summary>Findings about one item itself.</summary>
    public IEnumerable<Finding> About(Item item) => Findings.Where(f => f.Subject.Id == item.Id);

    /// <summary>Open stops of one phase.</summary>
    public int StopsIn(Phase phase) => OpenStops.Count(f => f.Check.Phase == phase);

    /// <summary>Findings by severity, then by phase, then as the checks gave them: dealt out rather than sorted, because this is done after every edit.</summary>
    private static ImmutableArray<Finding> InOrder(ImmutableArray<CheckSheet> sheets, House house)
    {
        var waivers = house.Waivers.ToLookup(w => (w.About, w.Check));
        var places = new List<Finding>?[Enum.GetValues<Severity>().Length * PhaseNames.All.Count];
        var count = 0;
        foreach (var sheet in sheets)
        {
            foreach (var finding in sheet.Findings)
            {
                var waiver = waivers.Count == 0 ? null : waivers[(finding.Subject.Id, finding.Check.Id)].LastOrDefault(w => WaivedFigures.Are(w, finding.Found.Message, house));
                (places[(int)finding.Check.Severity * PhaseNames.All.Count + (int)finding.Check.Phase] ??= []).Add(waiver is null ? finding : finding with { Waiver = waiver });
                count++;
            }
        }
        var ordered = ImmutableArray.CreateBuilder<Finding>(count);
        foreach (var place in places)
        {
            if (place is not null)
                ordered.AddRange(place);
        }
        return ordered.MoveToImmutable();
    }

    private string OwnerOf(Item item) =>
        item.Kind is ItemKind.Run or ItemKind.Leg && House.Find(item.Under) is { } above ? OwnerOf(above) : item.Id;
}

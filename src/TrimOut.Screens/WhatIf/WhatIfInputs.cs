using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using Question = TrimOut.Core.Electrical.WhatIf;

namespace TrimOut.Screens.WhatIf;

/// <summary>The figures that a what-if is asked with. Nothing of it is saved.</summary>
internal sealed record WhatIfInputs(
    Length OneWay, ConductorSize Conductor, Stranding Made, Current? Current, int Units, Length Apart, Voltage? Supply, Voltage? Least, Temperature Warmest)
{
    private ImmutableHashSet<string> Begun { get; init; } = [];

    /// <summary>Whether nobody typed a figure, here or in the house: it is what the program began with.</summary>
    public bool IsBegun(string label) => Begun.Contains(label);

    private ImmutableHashSet<string> Unchecked { get; init; } = [];

    /// <summary>Whether a figure comes from a maker's sheet that nobody held it against.</summary>
    public bool IsUnchecked(string label) => Unchecked.Contains(label);

    /// <summary>Whether any figure does: what is worked out rests on it then.</summary>
    public bool RestsOnUnchecked => !Unchecked.IsEmpty;

    /// <summary>With a figure that somebody said.</summary>
    public WhatIfInputs Said(string label) => this with { Begun = Begun.Remove(label), Unchecked = Unchecked.Remove(label) };

    /// <summary>
    /// What is known of a unit and its run. Where nothing is, a length and a conductor to begin with; volts and currents are blank: sheets say them.
    /// </summary>
    public static WhatIfInputs From(House house, Unit? unit)
    {
        var run = unit?.Run;
        var cable = CableOf(house, unit);
        var inches = house.DisplayUnits == DisplayUnits.Inches;
        // The length that checks and the cut plan reckon with: legs with tails as measured, or as planned where none was.
        var length = LengthOf(unit);
        string?[] begun =
        [
            length > Length.Zero ? null : WhatIfRow.LengthLabel,
            run?.Cable?.Conductor is null ? WhatIfRow.ConductorLabel : null,
            run?.Cable?.Stranding is null ? WhatIfRow.StrandingLabel : null,
            WhatIfRow.ApartLabel,
            BegunWith.Is(house.Job, HouseFacts.ConductorTemperature) || house.Job.Get(HouseFacts.ConductorTemperature) is null ? WhatIfRow.WarmestLabel : null,
        ];
        return new(
            length is { } known && known > Length.Zero ? known : inches ? Length.FromFeet(60) : Length.FromMetres(20),
            cable?.Conductor ?? new ConductorSize.Gauge(16), cable?.Stranding ?? Stranding.Stranded,
            CurrentOf(house, unit), 1,
            inches ? Length.FromFeet(10) : Length.FromMetres(3),
            SupplyOf(house, unit), unit?.Kind?.LeastVolts, house.Job.Get(HouseFacts.ConductorTemperature) ?? new Temperature(30))
        {
            Begun = [.. begun.OfType<string>()],
            Unchecked =
            [
                .. new (string Label, Func<House, Unit?, object?> Figure)[]
                {
                    (WhatIfRow.LengthLabel, (_, u) => LengthOf(u)), (WhatIfRow.ConductorLabel, (h, u) => CableOf(h, u)?.Conductor),
                    (WhatIfRow.StrandingLabel, (h, u) => CableOf(h, u)?.Stranding), (WhatIfRow.CurrentLabel, (h, u) => CurrentOf(h, u)),
                    (WhatIfRow.SupplyLabel, (h, u) => SupplyOf(h, u)), (WhatIfRow.LeastLabel, (_, u) => u?.Kind?.LeastVolts),
                }.Where(f => UncheckedValues.Read(house, h => f.Figure(h, unit is null ? null : h.FindUnit(unit.Id))) is (not null, { Count: > 0 }))
                    .Select(f => f.Label),
            ],
        };
    }

    private static Length? LengthOf(Unit? unit) => unit?.Run?.OneWay ?? unit?.Run?.Planned;

    private static CableType? CableOf(House house, Unit? unit) => unit?.Run?.Cable
        ?? house.ItemsOf(ItemKind.CableType).Select(i => new CableType(house, i)).FirstOrDefault(c => c.Conductor is not null);

    private static Current? CurrentOf(House house, Unit? unit) =>
        unit is not null && Load.Of(unit) is { } draws ? draws : house.Job.Get(HouseFacts.BudgetCurrent);

    private static Voltage? SupplyOf(House house, Unit? unit) => unit?.Run?.Supply ?? house.UsualSupply;

    /// <summary>The answer, with what the kit says beside it; or which figure makes no sense.</summary>
    public Result<Question> Ask(House house, Unit? unit) => (Supply, Current, Least) is not ({ } supply, { } current, { } least) ? new Refusal(Wanted!)
        : Question.Ask(Conductor, Made, Warmest, supply, OneWay, current, least, Units, Units > 1 ? Apart : default).Then<Question>(answer =>
            answer with { Table = InKit(house)?.LongestRun, Allowed = AllowedOf(house, unit) });

    private static int? AllowedOf(House house, Unit? unit) => (unit?.Run?.Panel?.Type ?? FirstPanel(house))?.UnitsPerOutput;

    /// <summary>Whether the longest run of the kit's table was read off no sheet.</summary>
    public bool IsTableUnchecked(House house) => UncheckedValues.Read(house, h => InKit(h)?.LongestRun) is (not null, { Count: > 0 });

    /// <summary>Whether how many units an output may feed was read off no sheet.</summary>
    public static bool IsAllowedUnchecked(House house, Unit? unit) =>
        UncheckedValues.Read(house, h => AllowedOf(h, unit is null ? null : h.FindUnit(unit.Id))) is (not null, { Count: > 0 });

    /// <summary>Which figures are blank, and whose sheet says them; null when there is nothing to ask.</summary>
    public string? Wanted
    {
        get
        {
            string?[] blank = [Supply is null ? "the supply of the panel" : null, Current is null ? "the current of the unit" : null,
                Least is null ? "its minimum volts" : null];
            return blank.OfType<string>().ToList() is { Count: > 0 } some
                ? $"Ask the sheet for {string.Join(" and ", some)}, and type what it says: nothing is worked out without."
                : null;
        }
    }

    /// <summary>The cable of the kit with this conductor.</summary>
    public CableType? InKit(House house) =>
        house.ItemsOf(ItemKind.CableType).Select(i => new CableType(house, i)).FirstOrDefault(c => c.Conductor == Conductor && c.Stranding == Made);

    /// <summary>The thinnest gauge that serves for these figures.</summary>
    public int? Thinnest => (Supply, Current, Least) is ({ } supply, { } current, { } least)
        ? Question.ThinnestGauge(Made, Warmest, supply, OneWay, current, least, Units, Units > 1 ? Apart : default)
        : null;

    private static PanelType? FirstPanel(House house) =>
        house.Panels.Select(p => p.Type).FirstOrDefault(t => t is not null) ?? house.ItemsOf(ItemKind.PanelType).Select(i => new PanelType(house, i))
            .FirstOrDefault();
}

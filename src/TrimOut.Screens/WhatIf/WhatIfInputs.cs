using TrimOut.Core;
using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using Question = TrimOut.Core.Electrical.WhatIf;

namespace TrimOut.Screens.WhatIf;

/// <summary>The figures that a what-if is asked with. Nothing of it is saved.</summary>
internal sealed record WhatIfInputs(
    Length OneWay, ConductorSize Conductor, Stranding Made, Current Current, int Units, Length Apart, Voltage Supply, Voltage Least, Temperature Warmest)
{
    /// <summary>What is known of a unit and its run, and what is usual where nothing is.</summary>
    public static WhatIfInputs From(House house, Unit? unit)
    {
        var run = unit?.Run;
        var cable = run?.Cable ?? house.ItemsOf(ItemKind.CableType).Select(i => new CableType(house, i)).FirstOrDefault(c => c.Conductor is not null);
        var inches = house.DisplayUnits == DisplayUnits.Inches;
        return new(
            (run?.OneWay ?? run?.AtLeast) is { } known && known > Length.Zero ? known : inches ? Length.FromFeet(60) : Length.FromMetres(20),
            cable?.Conductor ?? new ConductorSize.Gauge(16), cable?.Stranding ?? Stranding.Stranded,
            unit is not null && Load.Of(unit) is { } draws ? draws : new Current(1), 1, inches ? Length.FromFeet(10) : Length.FromMetres(3),
            run?.Supply ?? house.UsualSupply ?? new Voltage(12), unit?.Kind?.LeastVolts ?? new Voltage(10.2m), house.Job.Get(HouseFacts.ConductorTemperature)
                ?? new Temperature(30));
    }

    /// <summary>The answer, with what the kit says beside it; or which figure makes no sense.</summary>
    public Result<Question> Ask(House house, Unit? unit) =>
        Question.Ask(Conductor, Made, Warmest, Supply, OneWay, Current, Least, Units, Units > 1 ? Apart : default).Then<Question>(answer =>
            answer with { Table = InKit(house)?.LongestRun, Allowed = (unit?.Run?.Panel?.Type ?? FirstPanel(house))?.UnitsPerOutput });

    /// <summary>The cable of the kit with this conductor.</summary>
    public CableType? InKit(House house) =>
        house.ItemsOf(ItemKind.CableType).Select(i => new CableType(house, i)).FirstOrDefault(c => c.Conductor == Conductor && c.Stranding == Made);

    /// <summary>The thinnest gauge that serves for these figures.</summary>
    public int? Thinnest => Question.ThinnestGauge(Made, Warmest, Supply, OneWay, Current, Least, Units, Units > 1 ? Apart : default);

    private static PanelType? FirstPanel(House house) =>
        house.Panels.Select(p => p.Type).FirstOrDefault(t => t is not null) ?? house.ItemsOf(ItemKind.PanelType).Select(i => new PanelType(house, i))
            .FirstOrDefault();
}

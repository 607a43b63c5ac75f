using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Screens.WhatIf;

/// <summary>One figure that can be changed.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Hint">What may be typed.</param>
/// <param name="Show">Shows it.</param>
/// <param name="Read">Reads what was typed.</param>
/// <param name="Step">A little more or less of it.</param>
internal sealed record WhatIfRow(string Label, string Hint, Func<WhatIfInputs, House, string> Show, Func<WhatIfInputs, House, string,
    Result<WhatIfInputs>> Read, Func<WhatIfInputs, House, int, WhatIfInputs> Step)
{
    public const string LengthLabel = "Length, one way";
    public const string ConductorLabel = "Conductor";
    public const string StrandingLabel = "Solid or stranded";
    public const string CurrentLabel = "Current of a unit";
    public const string SupplyLabel = "Supply";
    public const string LeastLabel = "Minimum volts";
    public const string ApartLabel = "Cable between units";
    public const string WarmestLabel = "Max cable temp";
    private const string AskTheSheet = "ask the sheet";

    private static readonly ConductorSize[] Sizes = [.. ((int[])[22, 20, 18, 16, 14, 12, 10]).Select(n => new ConductorSize.Gauge(n))];

    public static readonly IReadOnlyList<WhatIfRow> All =
    [
        new(LengthLabel, "62 ft, 18.9 m", (i, h) => i.OneWay.ShowRounded(h.DisplayUnits, LengthScale.Run),
            (i, h, t) => LengthText.Read(t, h.DisplayUnits, LengthScale.Run).Then<WhatIfInputs>(v => i with { OneWay = v }),
            (i, h, by) => i with { OneWay = Length.Max(Foot(h), i.OneWay + Foot(h) * (5 * by)) }),
        new(ConductorLabel, "16 AWG, 1.5 mm2", (i, _) => i.Conductor.ToString()!,
            (i, _, t) => ConductorSize.Read(t).Then<WhatIfInputs>(v => i with { Conductor = v }), (i, _, by) => i with { Conductor = Beside(i.Conductor, by) }),
        new(StrandingLabel, "solid or stranded", (i, _) => KebabCase.Of(i.Made),
            (i, h, t) => CableTypeFacts.Stranding.ReadTyped(t, h).Then<WhatIfInputs>(v => i with { Made = KebabCase.Read<Stranding>(v)!.Value }),
            (i, _, _) => i with { Made = i.Made == Stranding.Solid ? Stranding.Stranded : Stranding.Solid }),
        new(CurrentLabel, "amperes, as the sheet of the kind says", (i, _) => Said(i.Current),
            (i, _, t) => Number(t, "amperes", 50, ("a", 1), ("ma", 0.001m)).Then<WhatIfInputs>(v => i with { Current = new Current(v) }),
            (i, _, by) => i.Current is { } now ? i with { Current = new Current(Math.Max(0.1m, now.Amperes + 0.1m * by)) } : i),
        new("Units on the cable", "1 to 8", (i, _) => i.Units.ToString(CultureInfo.InvariantCulture),
            (i, _, t) => Number(t, "units", 8)
                .Then<WhatIfInputs>(v => v == Math.Truncate(v) ? i with { Units = (int)v } : new Refusal($"{t} is no whole number.")),
            (i, _, by) => i with { Units = Math.Clamp(i.Units + by, 1, Core.Electrical.WhatIf.MostUnits) }),
        new(ApartLabel, "10 ft, 3 m", (i, h) => i.Units == 1 ? "-" : i.Apart.ShowRounded(h.DisplayUnits, LengthScale.Run),
            (i, h, t) => LengthText.Read(t, h.DisplayUnits, LengthScale.Run).Then<WhatIfInputs>(v => i with { Apart = v }),
            (i, h, by) => i with { Apart = Length.Max(Length.Zero, i.Apart + Foot(h) * by) }),
        new(SupplyLabel, "volts, as the sheet of the panel says", (i, _) => Said(i.Supply),
            (i, _, t) => Number(t, "volts", 60, ("v", 1)).Then<WhatIfInputs>(v => i with { Supply = new Voltage(v) }),
            (i, _, by) => i.Supply is { } now ? i with { Supply = new Voltage(Math.Clamp(now.Volts + by, 1, 60)) } : i),
        new(LeastLabel, "volts, as the sheet of the kind says", (i, _) => Said(i.Least),
            (i, _, t) => Number(t, "volts", 60, ("v", 1)).Then<WhatIfInputs>(v => i with { Least = new Voltage(v) }),
            (i, _, by) => i.Least is { } now
                ? i with { Least = new Voltage(Math.Clamp(now.Volts + 0.1m * by, 0, i.Supply?.Volts ?? Core.Electrical.WhatIf.MostVolts)) }
                : i),
        new(WarmestLabel, "30", (i, _) => i.Warmest.ToString(),
            (i, _, t) => NumberText.Read(t, "degrees Celsius", -60, 150, ("", 1), ("c", 1)).Then<WhatIfInputs>(v => i with { Warmest = new(v) }),
            (i, _, by) => i with { Warmest = new(Math.Clamp(i.Warmest.Celsius + 5 * by, -60, 150)) }),
    ];

    /// <summary>Whether nothing is typed for it yet.</summary>
    public bool IsBlank(WhatIfInputs inputs) => Show(inputs, House.Empty) == AskTheSheet;

    private static string Said<T>(T? value)
        where T : struct => value?.ToString() ?? AskTheSheet;

    private static Length Foot(House house) => house.DisplayUnits == DisplayUnits.Inches ? Length.FromFeet(1) : Length.FromMillimetres(200);

    private static Result<decimal> Number(string typed, string what, decimal most, params ReadOnlySpan<(string, decimal)> units) =>
        NumberText.Read(typed, what, 0, most, [("", 1), .. units]);

    private static ConductorSize Beside(ConductorSize size, int by)
    {
        ConductorSize[] sizes = size is ConductorSize.Metric ? [.. Core.Electrical.Conductors.MetricSizes.Select(s => new ConductorSize.Metric(s))] : Sizes;
        var at = Array.IndexOf(sizes, size);
        return at < 0 ? sizes[sizes.Length / 2] : sizes[Math.Clamp(at + by, 0, sizes.Length - 1)];
    }
}

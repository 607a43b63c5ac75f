using System.Globalization;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using Question = TrimOut.Core.Electrical.WhatIf;

namespace TrimOut.Screens.WhatIf;

/// <summary>What arrives over the length of a run, a curve for each conductor, with the minimum and the length that is asked about.</summary>
internal static class DropCurve
{
    /// <summary>Fewer lines say nothing.</summary>
    public const int LeastLines = 8;

    private const int Axis = 9;

    private static readonly ConductorSize[] Gauges = [.. ((int[])[20, 18, 16, 14, 12]).Select(g => new ConductorSize.Gauge(g))];

    private static readonly ConductorSize[] Metric = [.. ((decimal[])[0.75m, 1m, 1.5m, 2.5m, 4m]).Select(s => new ConductorSize.Metric(s))];

    /// <summary>The conductors that are drawn: usual ones of the same sort, with the one that is asked about among them.</summary>
    public static IReadOnlyList<ConductorSize> Conductors(ConductorSize asked)
    {
        var usual = asked is ConductorSize.Metric ? Metric : Gauges;
        return usual.Contains(asked) ? usual : [.. usual, asked];
    }

    /// <summary>The longest length that is drawn: twice what is asked about, and so far that the governing limit is seen.</summary>
    public static Length Farthest(Question asked) => Length.Min(Length.FromMetres(1000), Length.Max(asked.OneWay * 2, asked.Governing * 1.25m));

    /// <summary>The same question of another conductor; null where nobody knows its resistance.</summary>
    public static Question? Of(Question asked, WhatIfInputs inputs, ConductorSize conductor) =>
        Core.Electrical.Conductors.OhmsPerMetre(conductor, inputs.Made, inputs.Warmest) is { Ok: true } ohms ? asked with { OhmsPerMetre = ohms.Value } : null;

    /// <summary>Draws it; returns the lines that it took, none where there is no room.</summary>
    public static int Draw(Area area, WhatIfInputs inputs, Question asked, House house, Glyphs glyphs)
    {
        if (area.Height < LeastLines || area.Width < 60)
            return 0;
        var plot = area.Part(Axis, 1, area.Width - Axis - 1, area.Height - 3);
        var (top, bottom) = (asked.Supply.Volts, Lowest(asked));
        var farthest = Farthest(asked);
        area.PutFit(0, 0, area.Width, Legend(inputs, glyphs), Tone.Heading);
        int RowOf(decimal volts) => (int)Math.Round((top - volts) / (top - bottom) * (plot.Height - 1));
        var least = RowOf(asked.Least.Volts);
        for (var x = 0; x < plot.Width; x++)
            plot.Put(x, least, glyphs.Across, Tone.Caution);
        var here = (int)Math.Round(asked.OneWay / farthest * (plot.Width - 1));
        for (var y = 0; y < plot.Height; y++)
            plot.Put(here, y, glyphs.Down, Tone.Dim);
        var conductors = Conductors(inputs.Conductor);
        foreach (var (conductor, first) in conductors.Select((c, at) => (c, at)).OrderBy(c => c.c == inputs.Conductor))
        {
            // The one that is asked about is a whole line; the others are letters apart, so that none hides another.
            var isAsked = conductor == inputs.Conductor;
            var of = Of(asked, inputs, conductor);
            for (var x = isAsked ? 0 : first; of is not null && x < plot.Width; x += isAsked ? 1 : conductors.Count)
            {
                var arrives = (of with { OneWay = farthest * (x / (decimal)(plot.Width - 1)) }).Arrives;
                if (RowOf(arrives.Volts) is >= 0 and var y && y < plot.Height)
                    plot.Put(x, y, Mark(inputs, conductor, glyphs), isAsked ? Tone.Strong : Tone.Drawing);
            }
        }
        Label(area, 1, Volts(top));
        Label(area, plot.Height, Volts(bottom));
        if (least > 0 && least < plot.Height - 1)
            Label(area, 1 + least, Volts(asked.Least.Volts));
        var units = house.DisplayUnits;
        var axis = area.Rows(plot.Height + 1, 2);
        axis.Put(Axis, 0, "0", Tone.Dim);
        axis.PutRight(0, farthest.ShowRounded(units, LengthScale.Run) + " ", Tone.Dim);
        var asks = asked.OneWay.ShowRounded(units, LengthScale.Run);
        var asksAt = Math.Clamp(Axis + here - TextWidth.Of(asks) / 2, Axis + 2, axis.Width - 14);
        axis.Put(asksAt, 0, asks, Tone.Strong);
        // The limit that governs, where its words do not lie over the others.
        var limit = UncheckedValues.Marked($"longest {asked.Governing.ShowAtMost(units, LengthScale.Run)}",
            inputs.RestsOnUnchecked || inputs.IsTableUnchecked(house));
        var limitAt = Axis + (int)Math.Round(asked.Governing / farthest * (plot.Width - 1)) - TextWidth.Of(limit) / 2;
        if ((limitAt > asksAt + TextWidth.Of(asks) || limitAt + TextWidth.Of(limit) < asksAt)
            && limitAt > Axis + 2 && limitAt + TextWidth.Of(limit) < axis.Width - 12)
            axis.Put(limitAt, 0, limit, Tone.Caution);
        var which = inputs.Units > 1 ? " to the first unit; volts at the last one" : "";
        axis.PutFit(Axis, 1, axis.Width - Axis, $"{glyphs.Across} the minimum, {glyphs.Down} the length asked about, one way{which}", Tone.Dim);
        return area.Height;
    }

    /// <summary>The sign that a conductor is drawn with: letters, and a solid one for that which is asked about.</summary>
    public static string Mark(WhatIfInputs inputs, ConductorSize conductor, Glyphs glyphs) => conductor == inputs.Conductor ? glyphs.Solid
        : ((char)('a' + Conductors(inputs.Conductor).ToList().IndexOf(conductor))).ToString();

    /// <summary>The volts at the bottom: well below the minimum, and not below nothing.</summary>
    private static decimal Lowest(Question asked) => Math.Max(0, asked.Least.Volts - Math.Max(1, (asked.Supply.Volts - asked.Least.Volts) / 2));

    private static string Legend(WhatIfInputs inputs, Glyphs glyphs) =>
        "Volts that arrive, over length:  " + string.Join("  ", Conductors(inputs.Conductor).Select(c =>
            UncheckedValues.Marked($"{Mark(inputs, c, glyphs)} {c}", c == inputs.Conductor && inputs.IsUnchecked(WhatIfRow.ConductorLabel))));

    private static string Volts(decimal volts) => string.Create(CultureInfo.InvariantCulture, $"{volts:0.0} V");

    private static void Label(Area area, int y, string text) => area.PutFigure(0, y, Axis - 1, text, Tone.Dim);
}

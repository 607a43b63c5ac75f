using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Sun;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;

namespace TrimOut.Papers.Drawings;

/// <summary>The sun on one side of the house through the year: a row for each month, the hours of the clock across.</summary>
internal static class SunChart
{
    private const double Left = 36;
    private const double Top = 20;
    private const double Row = 13;
    private const double Hour = 24;
    private const double Bar = 3;
    private const int Letters = 3;

    /// <summary>What the drawing shows, in words.</summary>
    public static Inline Describe(Inline side, FacadeYear year) => Ours(
        $"Sun chart of side {side}: direct sun in June {Spans(year.Months[5].Direct)}, in December {Spans(year.Months[11].Direct)}");

    /// <summary>Stretches of the clock; "none" where there is none.</summary>
    public static Inline Spans(ImmutableArray<ClockSpan> spans) =>
        spans.IsEmpty ? Ours("none") : string.Join(", ", spans.Select(s => $"{s.FromShown}–{s.ToShown}"));

    /// <summary>A month in the reader's words.</summary>
    public static Inline MonthOf(House house, int month) => Choice(PresetFacts.RunsFrom.Label, PresetFacts.RunsFrom.Show((Month)(month - 1), house));

    /// <summary>The drawing.</summary>
    public static Svg Of(House house, FacadeYear year, Words words)
    {
        var foot = Top + 12 * Row;
        var svg = new Svg(X(24 * 60) + 4, foot + 6 + 2 * Svg.LegendLine);
        for (var hour = 0; hour <= 24; hour += 6)
        {
            var at = hour == 0 ? Anchored.Start : hour == 24 ? Anchored.End : Anchored.Middle;
            svg.Line(X(hour * 60), Top - 4, X(hour * 60), foot, Pen.Hair).Text(X(hour * 60), Top - 8, ClockSpan.Shown(hour * 60), at);
        }
        foreach (var month in year.Months)
        {
            var y = Top + (month.Month - 1) * Row;
            var name = MonthOf(house, month.Month).Plain(words);
            svg.Text(2, y + Row - 3, name[..Math.Min(Letters, name.Length)], room: Left - 4);
            Boxes(svg, month.Up, y + 1, Row - 2, Pen.None, Fill.White);
            Boxes(svg, month.Direct, y + 1, Row - 2, Pen.None, Fill.Light);
            Boxes(svg, month.Up, y + 1, Row - 2, Pen.Hair, Fill.None);
            Boxes(svg, month.Glare, y + 1, Bar, Pen.None, Fill.Black);
            Boxes(svg, month.Heat, y + Row - 1 - Bar, Bar, Pen.None, Fill.Black);
        }
        return svg.Legend(2, foot + 14,
            words.Of("White: the sun is up. Gray: it falls on the glass. Black along the top: it glares; along the bottom: it heats."));
    }

    private static void Boxes(Svg svg, ImmutableArray<ClockSpan> spans, double y, double high, Pen pen, Fill fill)
    {
        foreach (var span in spans)
            svg.Box(X(span.From), y, X(span.To) - X(span.From), high, pen, fill);
    }

    private static double X(int minutes) => Left + minutes * Hour / 60;
}

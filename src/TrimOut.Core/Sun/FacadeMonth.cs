using System.Collections.Immutable;

namespace TrimOut.Core.Sun;

/// <summary>What the sun does to a facade on the day that stands for a month, by the clocks of the place.</summary>
/// <param name="Month">The month, from 1.</param>
/// <param name="Direct">When direct sun falls on its glass.</param>
/// <param name="Glare">When it glares.</param>
/// <param name="Heat">When it heats.</param>
/// <param name="Closed">What to program: close at the beginning, open at the end.</param>
/// <param name="Up">When the sun is up.</param>
/// <param name="Straightest">The smallest angle of incidence of direct sun, in degrees; null where there is none.</param>
public sealed record FacadeMonth(int Month, ImmutableArray<ClockSpan> Direct, ImmutableArray<ClockSpan> Glare, ImmutableArray<ClockSpan> Heat,
    ImmutableArray<ClockSpan> Closed, ImmutableArray<ClockSpan> Up, double? Straightest)
{
    /// <summary>Minutes of direct sun.</summary>
    public int DirectMinutes => Sum(Direct);

    /// <summary>Minutes of glare.</summary>
    public int GlareMinutes => Sum(Glare);

    /// <summary>Minutes of heat.</summary>
    public int HeatMinutes => Sum(Heat);

    internal static FacadeMonth Of(SunDay day, Facade facade)
    {
        var direct = day.Spans(facade.IsLit);
        var closed = day.Spans(s => SunRules.Closes(s, facade)).Where(s => s.Minutes >= SunRules.ClosesFor);
        return new FacadeMonth(day.Day.Month, Clock(day, direct), Clock(day, day.Spans(s => SunRules.Glares(s, facade))),
            Clock(day, day.Spans(s => SunRules.Heats(s, facade))),
            Joined(closed.Select(s => ClockSpan.Of(s, day.Zone, SunRules.Step))), Clock(day, day.Up), StraightestOf(day, direct, facade));
    }

    private static ImmutableArray<ClockSpan> Clock(SunDay day, ImmutableArray<SunSpan> spans) => [.. spans.Select(s => ClockSpan.Of(s, day.Zone))];

    /// <summary>Stretches that touch once they are rounded are one.</summary>
    private static ImmutableArray<ClockSpan> Joined(IEnumerable<ClockSpan> spans)
    {
        var joined = new List<ClockSpan>();
        foreach (var span in spans)
        {
            if (joined.Count > 0 && joined[^1].To >= span.From)
                joined[^1] = joined[^1] with { To = span.To };
            else
                joined.Add(span);
        }
        return [.. joined];
    }

    private static double? StraightestOf(SunDay day, ImmutableArray<SunSpan> direct, Facade facade)
    {
        double? least = null;
        foreach (var span in direct)
        {
            for (var at = span.From; at < span.To; at += 300)
                least = Math.Min(least ?? 180, facade.IncidenceOf(day.At(at)));
        }
        return least;
    }

    private static int Sum(ImmutableArray<ClockSpan> spans) => spans.Sum(s => s.To - s.From);
}

using System.Collections.Immutable;

namespace TrimOut.Core.Sun;

/// <summary>What the sun does to a facade through the year.</summary>
public sealed class FacadeYear
{
    private FacadeYear(Facade facade, ImmutableArray<FacadeMonth> months) => (Facade, Months) = (facade, months);

    /// <summary>The facade.</summary>
    public Facade Facade { get; }

    /// <summary>Its months, from January.</summary>
    public ImmutableArray<FacadeMonth> Months { get; }

    /// <summary>Whether direct sun ever falls on it for long enough to close against.</summary>
    public bool EverClosed => Months.Any(m => !m.Closed.IsEmpty);

    /// <summary>The year of a facade.</summary>
    public static FacadeYear Of(SunYear year, Facade facade) => new(facade, [.. year.Days.Select(d => FacadeMonth.Of(d, facade))]);

    /// <summary>What the sun does there at a time of the clock: the strongest of what holds.</summary>
    /// <param name="month">The month, from 1.</param>
    /// <param name="minute">Minutes after midnight.</param>
    public SunOnGlass At(int month, int minute)
    {
        var of = Months[month - 1];
        return In(of.Heat) ? In(of.Glare) ? SunOnGlass.GlareAndHeat : SunOnGlass.Heat
            : In(of.Glare) ? SunOnGlass.Glare
            : In(of.Direct) ? SunOnGlass.Direct
            : In(of.Up) ? SunOnGlass.Elsewhere
            : SunOnGlass.Night;

        bool In(ImmutableArray<ClockSpan> spans) => spans.Any(s => s.From <= minute && minute < s.To);
    }
}

/// <summary>What the sun does to glass at a moment.</summary>
public enum SunOnGlass
{
    /// <summary>It is down.</summary>
    Night,

    /// <summary>It is up, and does not fall on this glass.</summary>
    Elsewhere,

    /// <summary>It falls on it.</summary>
    Direct,

    /// <summary>It is low and shines deep into the room.</summary>
    Glare,

    /// <summary>It heats.</summary>
    Heat,

    /// <summary>It glares and heats.</summary>
    GlareAndHeat,
}

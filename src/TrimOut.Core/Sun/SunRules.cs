namespace TrimOut.Core.Sun;

/// <summary>When sun on glass glares, when it heats, and when a covering is closed against it.</summary>
public static class SunRules
{
    /// <summary>
    /// A covering is closed against sun that meets the glass nearer to straight on than this, in degrees: common practice, no published source.
    /// </summary>
    public const double ClosesWithin = 75;

    /// <summary>For less than so many minutes nothing is closed: common practice, no published source.</summary>
    public const int ClosesFor = 30;

    /// <summary>A sun lower than this shines into faces, in degrees: common practice, no published source.</summary>
    public const double GlaresBelow = 30;

    /// <summary>Sun that meets the glass nearer to straight on than this reaches deep into a room, in degrees: common practice, no published source.</summary>
    public const double GlaresWithin = 60;

    /// <summary>
    /// The beam on the glass from which on it heats, in W/m²: where EN ISO 13790:2008 takes movable shades as closed (from memory; it counts the light of the
    /// sky too, and ours the beam alone).
    /// </summary>
    public const double HeatsFrom = 300;

    /// <summary>The day of each month that stands for it: no later than any change of clocks in its first half. Common practice, no published source.</summary>
    public const int Day = 15;

    /// <summary>The year that is reckoned with, so that a paper and a screen say the same; from year to year the sun is off by a minute at the most.</summary>
    public const int Year = 2026;

    /// <summary>Times to program are whole steps of so many minutes: closing is rounded to earlier, opening to later.</summary>
    public const int Step = 5;

    /// <summary>Whether a covering is closed against it.</summary>
    public static bool Closes(SunPosition sun, Facade facade) => facade.IsLit(sun) && facade.IncidenceOf(sun) < ClosesWithin;

    /// <summary>Whether it glares.</summary>
    public static bool Glares(SunPosition sun, Facade facade) =>
        sun.Altitude < GlaresBelow && facade.IsLit(sun) && facade.IncidenceOf(sun) < GlaresWithin;

    /// <summary>Whether it heats.</summary>
    public static bool Heats(SunPosition sun, Facade facade) => ClearSky.OnGlass(sun, facade) >= HeatsFrom;
}

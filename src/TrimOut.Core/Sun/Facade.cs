using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using static TrimOut.Core.Sun.Angle;

namespace TrimOut.Core.Sun;

/// <summary>A direction that glass looks out to, with what stands before the sun there. Windows with the same one have the same sun.</summary>
/// <param name="Facing">Where it looks out to, in degrees clockwise from true north.</param>
/// <param name="Horizon">How high what stands opposite reaches, in degrees above level: houses, trees, a ridge.</param>
/// <param name="Overhang">What stands out above it; null for nothing.</param>
public sealed record Facade(double Facing, double Horizon = 0, Overhang? Overhang = null)
{
    /// <summary>The facade of a window; null while nobody noted where it looks out to.</summary>
    /// <remarks>An overhang counts once the height of the window is known.</remarks>
    public static Facade? Of(Window window)
    {
        if (window.Item.Get(WindowFacts.Facing) is not { } facing)
            return null;
        var overhang = window.Item.Get(WindowFacts.OverhangDepth) is { } depth && window.KnownHeight is { } height
            ? new Overhang(Metres(depth), Metres(window.Item.Get(WindowFacts.OverhangAbove) ?? Units.Length.Zero), Metres(height))
            : (Overhang?)null;
        return new Facade((double)facing.Degrees, (double)(window.Item.Get(WindowFacts.Horizon) ?? 0), overhang);
    }

    /// <summary>Whether direct sun falls on some of the glass.</summary>
    public bool IsLit(SunPosition sun) => Lit(sun) > 0;

    /// <summary>How much of the glass direct sun falls on, from 0 to 1.</summary>
    public double Lit(SunPosition sun) =>
        sun.Altitude <= Math.Max(0, Horizon) || Cos(sun.Azimuth - Facing) <= 0 ? 0 : 1 - (Overhang?.Shaded(sun, Facing) ?? 0);

    /// <summary>The angle of incidence on its glass, in degrees.</summary>
    public double IncidenceOf(SunPosition sun) => Incidence.Of(sun, Facing);

    private static double Metres(Units.Length length) => length.Nanometres / 1e9;
}

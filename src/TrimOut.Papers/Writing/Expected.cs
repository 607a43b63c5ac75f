using TrimOut.Core.Electrical;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Papers.Writing;

/// <summary>What a meter should show on a home run.</summary>
internal static class Expected
{
    /// <summary>The loop with the window end shorted, at 20 C, rounded to 0.01 ohm; null while legs, tails or cable are not known.</summary>
    public static Resistance? Loop(HomeRun run) =>
        run.OneWay is { } oneWay && run.Cable is { Conductor: { } size, Stranding: { } made }
            && Conductors.OhmsPerMetre(size, made, Temperature.Reference) is { Ok: true } ohms
            ? new Resistance(Math.Round(TwoWire.Loop(oneWay, ohms.Value).Ohms, 2, MidpointRounding.AwayFromZero))
            : null;

    /// <summary>Volts at the unit while it lifts, with the cable at max temp, rounded to 0.01 V; null while a part is not known.</summary>
    public static Voltage? WhileRunning(HomeRun run) => Rounded(run.VoltsWhileRunning);

    /// <summary>Volts at the unit while it starts, with the cable at max temp, rounded to 0.01 V; null while a part is not known.</summary>
    public static Voltage? WhileStarting(HomeRun run) => Rounded(run.VoltsWhileStarting);

    private static Voltage? Rounded(Voltage? volts) => volts is { } known ? new(Math.Round(known.Volts, 2, MidpointRounding.AwayFromZero)) : null;
}

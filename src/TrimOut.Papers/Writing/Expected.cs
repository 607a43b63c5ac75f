using TrimOut.Core.Electrical;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Papers.Writing;

/// <summary>What a meter should show on a home run.</summary>
internal static class Expected
{
    /// <summary>
    /// The loop with the window end shorted, at 20 C, with the meter's leads where the house notes them, rounded to 0.01 ohm; null while legs, tails or cable
    /// are not known, and of a branch, whose cable begins at another window.
    /// </summary>
    public static Resistance? Loop(HomeRun run) =>
        run is { BranchesOff: null, OneWay: { } oneWay } && run.Cable is { Conductor: { } size, Stranding: { } made }
            && Conductors.OhmsPerMetre(size, made, Temperature.Reference) is { Ok: true } ohms
            ? new Resistance(Math.Round(TwoWire.Loop(oneWay, ohms.Value).Ohms + Leads(run), 2, MidpointRounding.AwayFromZero))
            : null;

    /// <summary>What the leads of the meter add, in ohms: as kept with the first reading, else as the house notes them.</summary>
    private static decimal Leads(HomeRun run) => (run.FirstTest?.Leads ?? run.House.Job.Get(HouseFacts.MeterLeads))?.Ohms ?? 0;

    /// <summary>Volts at the unit while it lifts, with the cable at max temp, rounded to 0.01 V; null while a part is not known, and of a branch.</summary>
    public static Voltage? WhileRunning(HomeRun run) => Rounded(run, run.VoltsWhileRunning);

    /// <summary>Volts at the unit while it starts, with the cable at max temp, rounded to 0.01 V; null while a part is not known, and of a branch.</summary>
    public static Voltage? WhileStarting(HomeRun run) => Rounded(run, run.VoltsWhileStarting);

    private static Voltage? Rounded(HomeRun run, Voltage? volts) => run.BranchesOff is null && volts is { } known
        ? new(Math.Round(known.Volts, 2, MidpointRounding.AwayFromZero)) : null;
}

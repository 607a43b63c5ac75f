using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>How long a run may be by what its installer allows to be lost: for planning, while no maker's table and no motor's volts are known.</summary>
/// <param name="Drop">The volts that may be lost out and back.</param>
/// <param name="Current">The current that is reckoned with.</param>
/// <remarks>Ohm's law: longest = drop / (2 x current x ohms per metre), one way. A maker's table governs once there is one and is tighter.</remarks>
public readonly record struct LoopBudget(Voltage Drop, Current Current)
{
    /// <summary>The budget that was stated for a house; null while a part of it is not known.</summary>
    public static LoopBudget? Of(House house) =>
        (house.Job.Get(HouseFacts.DropAllowed), house.Job.Get(HouseFacts.BudgetCurrent)) is ({ } drop, { } current) ? new(drop, current) : null;

    /// <summary>The longest run, one way.</summary>
    /// <param name="ohmsPerMetre">Resistance of one conductor at the warmest that the cable gets; more than nothing.</param>
    public Length Longest(decimal ohmsPerMetre) => TwoWire.Longest(Drop, new Voltage(0), ohmsPerMetre, Current);

    /// <summary>The longest run of a cable in its house; null while conductor, stranding, temperature or budget is not known.</summary>
    public static Length? LongestOf(CableType cable) =>
        Of(cable.House) is { } budget && cable is { Conductor: { } size, Stranding: { } made }
        && cable.House.Job.Get(HouseFacts.ConductorTemperature) is { } at && Conductors.OhmsPerMetre(size, made, at) is { Ok: true } ohms
            ? budget.Longest(ohms.Value) : null;
}

using TrimOut.Core.Units;

namespace TrimOut.Core.Electrical;

/// <summary>What limits the length of a home run, and by how much: the maker's table and the voltage that arrives, side by side.</summary>
/// <param name="Supply">Voltage at the panel's output.</param>
/// <param name="Least">The least at the unit at which it still lifts.</param>
/// <param name="Running">Current while it lifts.</param>
/// <param name="Starting">Current in the first moment.</param>
/// <param name="OhmsPerMetre">Resistance of one conductor.</param>
/// <param name="Table">The longest run of the maker's table; null when it gives none.</param>
public readonly record struct RunLimits(Voltage Supply, Voltage Least, Current Running, Current Starting, decimal OhmsPerMetre, Length? Table)
{
    /// <summary>The larger of the two currents, which decides.</summary>
    public Current Worst => Running >= Starting ? Running : Starting;

    /// <summary>The longest run by voltage drop, one way.</summary>
    public Length ByVolts => TwoWire.Longest(Supply, Least, OhmsPerMetre, Worst);

    /// <summary>The tighter of the two.</summary>
    public Length Governing => Table is { } table ? Length.Min(table, ByVolts) : ByVolts;

    /// <summary>Whether the maker's table is the tighter one.</summary>
    public bool TableGoverns => Table is { } table && table <= ByVolts;

    /// <summary>Voltage at the unit while it lifts.</summary>
    public Voltage WhileRunning(Length oneWay) => TwoWire.Arrives(Supply, oneWay, OhmsPerMetre, Running);

    /// <summary>Voltage at the unit in the first moment.</summary>
    public Voltage WhileStarting(Length oneWay) => TwoWire.Arrives(Supply, oneWay, OhmsPerMetre, Starting);

    /// <summary>Volts to spare under the larger current; negative when there are too few.</summary>
    public Voltage MarginVolts(Length oneWay) => TwoWire.Arrives(Supply, oneWay, OhmsPerMetre, Worst) - Least;

    /// <summary>Cable to spare before the tighter limit; negative when the run is too long.</summary>
    public Length MarginLength(Length oneWay) => Governing - oneWay;
}

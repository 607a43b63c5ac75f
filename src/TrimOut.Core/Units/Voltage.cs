namespace TrimOut.Core.Units;

/// <summary>Direct voltage, in volts.</summary>
/// <param name="Volts">Volts; negative when the leads are the other way round.</param>
public readonly record struct Voltage(decimal Volts) : IComparable<Voltage>
{
    /// <inheritdoc/>
    public int CompareTo(Voltage other) => Volts.CompareTo(other.Volts);

    /// <summary>Sum.</summary>
    public static Voltage operator +(Voltage a, Voltage b) => new(a.Volts + b.Volts);

    /// <summary>Difference.</summary>
    public static Voltage operator -(Voltage a, Voltage b) => new(a.Volts - b.Volts);

    /// <summary>So many times as much.</summary>
    public static Voltage operator *(Voltage a, decimal times) => new(a.Volts * times);

    /// <summary>Less than.</summary>
    public static bool operator <(Voltage a, Voltage b) => a.Volts < b.Volts;

    /// <summary>More than.</summary>
    public static bool operator >(Voltage a, Voltage b) => a.Volts > b.Volts;

    /// <summary>No more than.</summary>
    public static bool operator <=(Voltage a, Voltage b) => a.Volts <= b.Volts;

    /// <summary>No less than.</summary>
    public static bool operator >=(Voltage a, Voltage b) => a.Volts >= b.Volts;

    /// <summary>The number and its unit, to three decimals.</summary>
    public override string ToString() => NumberText.Show(Volts, "V");
}

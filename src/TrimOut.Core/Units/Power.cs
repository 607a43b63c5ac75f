namespace TrimOut.Core.Units;

/// <summary>Electrical power, in watts (for direct current the same as volt-amperes).</summary>
/// <param name="Watts">Watts.</param>
public readonly record struct Power(decimal Watts) : IComparable<Power>
{
    /// <inheritdoc/>
    public int CompareTo(Power other) => Watts.CompareTo(other.Watts);

    /// <summary>Sum.</summary>
    public static Power operator +(Power a, Power b) => new(a.Watts + b.Watts);

    /// <summary>Difference.</summary>
    public static Power operator -(Power a, Power b) => new(a.Watts - b.Watts);

    /// <summary>So many times as much.</summary>
    public static Power operator *(Power a, decimal times) => new(a.Watts * times);

    /// <summary>Less than.</summary>
    public static bool operator <(Power a, Power b) => a.Watts < b.Watts;

    /// <summary>More than.</summary>
    public static bool operator >(Power a, Power b) => a.Watts > b.Watts;

    /// <summary>No more than.</summary>
    public static bool operator <=(Power a, Power b) => a.Watts <= b.Watts;

    /// <summary>No less than.</summary>
    public static bool operator >=(Power a, Power b) => a.Watts >= b.Watts;

    /// <summary>The number and its unit, to three decimals.</summary>
    public override string ToString() => NumberText.Show(Watts, "W");
}
